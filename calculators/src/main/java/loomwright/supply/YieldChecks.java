package loomwright.supply;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Findings and known mistakes of a panel's yield. */
final class YieldChecks {
    /** The row lifepo4-cool-charging holds below this. */
    private static final Quantity COOL = Quantity.of(10, Units.CELSIUS);

    private YieldChecks() {}

    static void addFindings(WorkingBuilder working, Entries entries, Values values, Quantity current) {
        if (entries.has("energy-per-day")) {
            addBalance(working, values, entries.has("deficit"));
        }
        working.finding(Finding.notKnown(
                "In full sun up to " + current.text(3) + " flow into the battery; how much it takes is not asked here.", current, SupplyFields.computed(),
                new MissingFigure("", "largest charging current of the battery", "the battery or its data sheet")));
        if (Chemistry.of(entries) == Chemistry.LIFEPO4) {
            addCharging(working, entries, current);
        }
    }

    private static void addBalance(WorkingBuilder working, Values values, boolean deficit) {
        String never = deficit ? " What was taken is never put back." : "";
        working.finding(Comparison.of("What the panel gives in a day", values.of(YieldFormulas.YIELD))
                .atLeast(values.of(YieldFormulas.USED), "what is used in a day", SupplyFields.computed())
                .otherwise(Verdict.CAUTION, "Use less, take a larger panel, or charge another way as well." + never)
                .ifClose("A dull day is enough to fall behind: use less, or take a larger panel.")
                .finding());
    }

    private static void addCharging(WorkingBuilder working, Entries entries, Quantity current) {
        Row row = Chemistry.limit("lifepo4-charging-temperature");
        if (!entries.has("temperature")) {
            working.finding(Finding.notKnown(
                    "A LiFePO4 battery must not be charged below " + row.quantity("value", Units.CELSIUS).text() + ".", current, row.source(),
                    new MissingFigure(
                            "temperature", "coldest temperature of the battery", "a thermometer at it; and see that the charger or the battery stops charging in the cold")));
            return;
        }
        Quantity temperature = entries.quantity("temperature");
        Cold.addChargingLimit(working, temperature);
        boolean cool = temperature.base() < COOL.base() && temperature.base() >= row.quantity("value", Units.CELSIUS).base();
        if (cool && entries.has("capacity")) {
            addCoolCharging(working, entries.quantity("capacity").in(Units.AMPERE_HOUR), current);
        }
    }

    private static void addCoolCharging(WorkingBuilder working, Quantity capacity, Quantity current) {
        Row row = Chemistry.limit("lifepo4-cool-charging");
        Quantity limit = Quantity.of(row.quantity("value", Units.PERCENT).base() * capacity.value(), Units.AMPERE);
        working.finding(Comparison.of("The charging current of full sun", current)
                .atMost(limit, "what this battery takes below " + COOL.text(), row.source())
                .otherwise(Verdict.STOP, "Set the charger to a smaller current, or warm the battery first.")
                .finding());
    }

    /** The mistakes with the panel that a day needs. */
    static void addNeededSlips(WorkingBuilder working, Values values) {
        working.slip(
                "multiplied-by-the-efficiency", "panel-needed", "Multiplied by the efficiency",
                "The panel must make up for the losses, so divide here.", YieldFormulas.NEED_MULTIPLIED, values);
        working.slip(
                "efficiency-left-out-of-the-panel", "panel-needed", "The efficiency left out",
                "The panel must make up for the losses too.", YieldFormulas.NEED_WITHOUT_EFFICIENCY, values);
    }

    static void addSlips(WorkingBuilder working, Values values, boolean used, boolean recovers) {
        working.slip(
                "efficiency-left-out", "yield-per-day", "The efficiency left out", "Heat, dirt, cables and charging take a share.",
                YieldFormulas.EFFICIENCY_LEFT_OUT, values);
        working.slip(
                "divided-by-the-efficiency", "yield-per-day", "Divided by the efficiency",
                "What arrives is less than what the panel makes, so multiply here.", YieldFormulas.DIVIDED, values);
        working.slip(
                "daylight-for-peak-sun", "yield-per-day", "Twelve hours of daylight used in place of peak sun hours",
                "Most of the day the sun is far below full strength.", YieldFormulas.DAYLIGHT, values);
        if (used) {
            addNeededSlips(working, values);
        }
        if (used && recovers) {
            working.slip(
                    "whole-yield-for-the-rest", "days-to-recover", "The whole yield used in place of what is left over",
                    "The loads of the day take their part first.", YieldFormulas.YIELD_FOR_BALANCE, values);
        }
    }
}
