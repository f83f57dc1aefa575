package loomwright.protection;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.WorkingBuilder;

/**
 * The loop a fault current flows round, at one end of its range.
 *
 * @param parts the resistances it is made of, in order
 * @param values what they are, and the voltage of the battery
 */
record FaultLoop(List<Symbol> parts, Values values) {
    static FaultLoop of(Quantity voltage, Quantity battery) {
        return new FaultLoop(List.of(FaultSymbols.BATTERY), Values.of(FaultSymbols.VOLTAGE, voltage).with(FaultSymbols.BATTERY, battery));
    }

    FaultLoop and(Symbol part, Quantity resistance) {
        List<Symbol> more = new ArrayList<>(parts);
        more.add(part);
        return new FaultLoop(List.copyOf(more), values.with(part, resistance));
    }

    /** Adds the parts up and divides the voltage by them, with the steps; gives the loop with its resistance and its current. */
    FaultLoop worked(WorkingBuilder working, String end) {
        Quantity loop = parts.size() == 1
                ? values.of(FaultSymbols.BATTERY)
                : working.compute(
                        "Add up the loop for the " + end + " current", FaultFormulas.loop(parts), values, Units.MILLIOHM,
                        "One current flows through all of it, so the resistances add.");
        Values withLoop = values.with(FaultSymbols.LOOP, loop);
        Quantity current = working.compute(
                "Divide the voltage by it", FaultFormulas.CURRENT, withLoop, Units.AMPERE, "Nothing else holds the current back.");
        return new FaultLoop(parts, withLoop.with(FaultSymbols.CURRENT, current));
    }

    Quantity resistance() {
        return values.of(FaultSymbols.LOOP);
    }

    Quantity current() {
        return values.of(FaultSymbols.CURRENT);
    }
}
