package loomwright.supply;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Findings and known mistakes of a state of charge. */
final class ChargeChecks {
    private ChargeChecks() {}

    static void addFindings(WorkingBuilder working, Entries entries, ChargeTable table, Values values) {
        addRest(working, entries.quantity("rest-time"));
        for (ChargeTable other : ChargeTable.values()) {
            if (other != table) {
                addOther(working, table, other, values.of(ChargeFormulas.MEASURED));
            }
        }
        addDepth(working, values);
        if (entries.has("temperature")) {
            addFreezing(working, values.of(ChargeFormulas.AT_LEAST), entries.quantity("temperature"));
        }
    }

    private static void addRest(WorkingBuilder working, Quantity rest) {
        Row row = Chemistry.limit("lead-acid-rest");
        Quantity least = row.quantity("value", Units.HOUR);
        boolean rested = rest.base() >= least.base();
        working.finding(new Finding(
                rested ? Verdict.PASSED : Verdict.STOP,
                "The battery rested " + rest.text() + ", " + (rested ? "not less" : "less") + " than " + least.text() + ".", rest, least,
                row.source(), rested ? "" : "This voltage does not count yet: let the battery rest with nothing connected and measure again."));
    }

    private static void addOther(WorkingBuilder working, ChargeTable table, ChargeTable other, Quantity measured) {
        boolean same = table.places(measured).equals(other.places(measured));
        working.finding(new Finding(
                same ? Verdict.PASSED : Verdict.CAUTION,
                other.sentenceStart() + " puts " + measured.text() + " " + other.places(measured) + ".", measured, null,
                other.table().source(), same ? "" : "The tables disagree here: plan with the lower answer, and stay with one table."));
    }

    private static void addDepth(WorkingBuilder working, Values values) {
        Row row = Chemistry.LEAD_ACID.depth();
        Quantity depth = row.quantity("value", Units.PERCENT);
        Quantity least = Quantity.of(100 - depth.value(), Units.PERCENT);
        Quantity low = values.of(ChargeFormulas.AT_LEAST);
        boolean enough = low.base() >= least.base() - 1e-9;
        working.finding(new Finding(
                enough ? Verdict.PASSED : Verdict.CAUTION,
                "With at least " + low.text() + " the battery is " + (enough ? "not" : "or may be") + " below " + least.text()
                        + ", what a depth of " + depth.text() + " leaves.",
                low, least, row.source(), enough ? "" : "Charge it before you draw more."));
    }

    private static void addFreezing(WorkingBuilder working, Quantity low, Quantity temperature) {
        Row row = PublishedTables.batterySpecificGravity().find("charge", low);
        if (row == null) {
            working.finding(new Finding(
                    Verdict.CAUTION, "At " + low.text() + " of charge there is no freezing point in print; a flat battery freezes first.",
                    temperature, null, PublishedTables.batterySpecificGravity().source(), "Keep it above 0 °C, and charge it."));
            return;
        }
        Quantity freezing = row.quantity("freezing-point");
        boolean liquid = temperature.base() > freezing.base();
        working.finding(new Finding(
                liquid ? Verdict.PASSED : Verdict.STOP,
                "At " + temperature.text() + " the acid of a battery with " + low.text() + " of charge is " + (liquid ? "above" : "at or below")
                        + " its freezing point, " + freezing.text() + ".",
                temperature, freezing, row.source(),
                liquid ? "" : "Do not charge a battery that may be frozen: bring it into the warm and look at its case first."));
    }

    static void addSlips(WorkingBuilder working, ChargeTable table, Values values, boolean withCapacity) {
        working.slip(
                "share-of-the-full-voltage", "charge-at-least", "The voltage taken as a share of the full voltage",
                "From full to empty the voltage falls by 1 V or less, not to nothing.", ChargeFormulas.SHARE_OF_FULL_VOLTAGE, values);
        working.slip(
                "what-is-gone-for-what-is-left", "charge-at-least", "What is gone taken for what is left",
                "State of charge counts what is still in.", ChargeFormulas.DEPTH_FOR_CHARGE, values);
        if (values.of(ChargeFormulas.AT_LEAST).base() < values.of(ChargeFormulas.AT_MOST).base()) {
            working.slip(
                    "straight-line-between-the-rows", "charge-at-least", "A figure read between two rows",
                    "No table prints what lies between its rows: the answer is the two rows.", ChargeFormulas.STRAIGHT_LINE, values);
            working.slip(
                    "row-above", "charge-at-least", "The row above taken", "Plan with the row below: the battery holds at least that.",
                    ChargeFormulas.UPPER_ROW, values);
        }
        for (ChargeTable other : ChargeTable.values()) {
            Row row = other == table ? null : other.below(values.of(ChargeFormulas.MEASURED));
            if (row != null && row.quantity("charge").base() != values.of(ChargeFormulas.AT_LEAST).base()) {
                working.slip(
                        "row-of-another-table", "charge-at-least", "The row of another table", "Stay with the table you chose.",
                        ChargeFormulas.ROW_OF_ANOTHER_TABLE, values.with(ChargeFormulas.OTHER, row.quantity("charge")));
            }
        }
        if (withCapacity) {
            working.slip(
                    "left-for-put-back", "deficit", "What is left taken for what is to be put back", "Put back what is missing.",
                    ChargeFormulas.LEFT_FOR_DEFICIT, values);
        }
    }
}
