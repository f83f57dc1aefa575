package loomwright.conductor;

import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/**
 * What a run asks of its conductor as regards drop.
 *
 * @param byArea whether the small-craft formula is used, so that the area decides
 * @param values current, circuit length, supply voltage, limit in volts, and the least area or the highest resistance of one metre
 */
record RunNeed(boolean byArea, Values values) {
    private static final double HAIR = 1e-9;

    static RunNeed of(Entries entries, WorkingBuilder working) {
        boolean byArea = entries.choice("method").equals("circular-mil-10.75");
        Quantity current = working.convert(
                "Turn the current into amperes", entries.quantity("current"), Units.AMPERE, "Volts are amperes times ohms.");
        Quantity length = working.convert(
                "Turn the length into " + (byArea ? "feet" : "metres"), outAndBack(entries, working), byArea ? Units.FEET : Units.METRE,
                byArea ? "The constant is made for feet." : "The resistance is known for one metre.");
        Values values = Values.of(Symbols.CURRENT, current)
                .with(Symbols.CIRCUIT_LENGTH, length)
                .with(Symbols.SUPPLY_VOLTAGE, entries.quantity("supply-voltage"));
        values = values.with(RunFormulas.LIMIT, limit(entries.quantity("allowance"), values, working));
        return new RunNeed(byArea, byArea ? withLeastArea(working, values) : withHighestResistance(working, values));
    }

    private static Quantity outAndBack(Entries entries, WorkingBuilder working) {
        Quantity entered = entries.quantity("route-length");
        if (entries.choice("length-counts").equals("out-and-back")) {
            return entered;
        }
        return working.compute(
                "Count the way out and the way back", DropFormulas.CIRCUIT_LENGTH, Values.of(Symbols.ROUTE_LENGTH, entered), entered.unit(),
                "The current comes back through a second conductor, which loses as much again.");
    }

    private static Quantity limit(Quantity allowance, Values values, WorkingBuilder working) {
        if (!allowance.dimension().equals(Dimension.NUMBER)) {
            return working.convert("Turn the limit into volts", allowance, Units.VOLT, "Volts are amperes times ohms.");
        }
        return working.compute(
                "Turn the drop allowed into volts", RunFormulas.LIMIT_IN_VOLTS, values.with(RunFormulas.SHARE, allowance), Units.VOLT,
                "The rule sets take a share of the nominal voltage.");
    }

    private static Values withHighestResistance(WorkingBuilder working, Values values) {
        return values.with(RunFormulas.HIGHEST, working.compute(
                "Find the highest resistance of one metre that keeps within it", RunFormulas.HIGHEST_PER_METRE, values,
                Units.MILLIOHM_PER_METRE, "Ohm's law turned round: a conductor with less passes."));
    }

    private static Values withLeastArea(WorkingBuilder working, Values values) {
        return values.with(RunFormulas.LEAST, working.compute(
                "Find the least area that keeps within it", RunFormulas.LEAST_AREA, values, Units.CIRCULAR_MIL,
                "The constant holds the resistivity of copper at about "
                        + DropFormulas.MIL_FOOT.quantity("implied-temperature").text() + ".",
                DropFormulas.MIL_FOOT.source()));
    }

    Quantity limit() {
        return values.of(RunFormulas.LIMIT);
    }

    Quantity current() {
        return values.of(Symbols.CURRENT);
    }

    /** Whether a size keeps the drop within the limit, with the length counted {@code times} times: once is right. */
    boolean isMetBy(RunSize size, double times) {
        return byArea
                ? size.area().base() >= times * values.of(RunFormulas.LEAST).base() * (1 - HAIR)
                : times * size.perMetre().base() <= values.of(RunFormulas.HIGHEST).base() * (1 + HAIR);
    }

    /** The drop with a size, without a step. */
    Quantity drop(RunSize size) {
        double base = byArea
                ? values.of(RunFormulas.LEAST).base() / size.area().base() * limit().base()
                : size.perMetre().base() / values.of(RunFormulas.HIGHEST).base() * limit().base();
        return Quantity.ofBase(base, Units.VOLT);
    }

    /** The drop with a size, with the steps that lead to it. */
    Quantity showDrop(WorkingBuilder working, ConductorKind kind, RunSize size, Quantity temperature) {
        if (byArea) {
            return working.compute(
                    "Put its area into the formula", DropFormulas.CIRCULAR_MIL, values.with(Symbols.AREA, size.area()), Units.VOLT,
                    "This is what the size chosen really loses.", DropFormulas.MIL_FOOT.source());
        }
        Quantity perMetre = ResistancePerMetre.at(working, kind, size.row().quantity("size"), temperature);
        Quantity resistance = working.compute(
                "Multiply by the length", DropFormulas.CIRCUIT_RESISTANCE, values.with(Symbols.PER_METRE, perMetre), Units.MILLIOHM,
                "Each metre adds the same resistance again.");
        return working.compute(
                "Multiply by the current", DropFormulas.DROP, values.with(Symbols.CIRCUIT_RESISTANCE, resistance), Units.VOLT,
                "This is what the size chosen really loses.");
    }
}
