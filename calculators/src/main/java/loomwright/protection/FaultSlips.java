package loomwright.protection;

import java.util.List;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.WorkingBuilder;

/** The known mistakes of a fault current, with the present numbers. */
final class FaultSlips {
    private static final List<Symbol> STRETCHES = List.of(FaultSymbols.FEED, FaultSymbols.BRANCH);
    private static final List<Symbol> BATTERY = List.of(FaultSymbols.BATTERY);

    private FaultSlips() {}

    static void add(WorkingBuilder working, FaultLoop highest, FaultLoop lowest) {
        if (highest != null) {
            end(working, "highest-current", highest);
            swapped(working, "highest-current", lowest);
            swapped(working, "lowest-current", highest);
        }
        end(working, "lowest-current", lowest);
    }

    private static void end(WorkingBuilder working, String output, FaultLoop loop) {
        List<Symbol> parts = loop.parts();
        boolean stretched = parts.contains(FaultSymbols.FEED) || parts.contains(FaultSymbols.BRANCH);
        if (stretched) {
            slip(
                    working, "one-way-length", output, "The conductors counted one way only",
                    "The fault current comes back through the return conductor, which has as much resistance again.",
                    FaultFormulas.mistaken(parts, STRETCHES, 0.5), loop);
            slip(
                    working, "conductors-left-out", output, "The conductors left out",
                    "A few metres of conductor have more resistance than the battery itself.", FaultFormulas.mistaken(parts, STRETCHES, 0),
                    loop);
        }
        slip(
                working, "battery-left-out", output, "The inside resistance of the battery left out",
                "It is small, but with short thick conductors it is most of the loop.", FaultFormulas.mistaken(parts, BATTERY, 0), loop);
        Quantity school = BatteryKind.schoolExercise().quantity("value", Units.OHM).in(Units.MILLIOHM);
        working.slip(
                "school-resistance", output, "The inside resistance of a school exercise",
                "Exercises give a car battery 0.05 Ω and more; a real one has a few milliohms.",
                FaultFormulas.mistaken(parts, List.of(), 1),
                loop.values().with(FaultSymbols.BATTERY, school));
    }

    private static void swapped(WorkingBuilder working, String output, FaultLoop other) {
        working.slip(
                "ends-swapped", output, "Each end of the range used in place of the other",
                "The least resistance gives the highest current. Breaking capacity asks for the highest, opening time for the lowest.",
                FaultFormulas.CURRENT, other.values());
    }

    private static void slip(
            WorkingBuilder working, String key, String output, String name, String words, Formula formula, FaultLoop loop) {
        if (formula != null) {
            working.slip(key, output, name, words, formula, loop.values());
        }
    }
}
