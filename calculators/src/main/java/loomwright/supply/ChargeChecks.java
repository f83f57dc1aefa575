package loomwright.supply;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
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
        working.finding(Comparison.of("The rest of the battery", rest)
                .atLeast(row.quantity("value", Units.HOUR), "the rest after which its voltage tells the charge", row.source())
                .exact()
                .otherwise(Verdict.STOP, "This voltage does not count yet: let the battery rest with nothing connected and measure again.")
                .finding());
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
        working.finding(Comparison.of("The least state of charge", values.of(ChargeFormulas.AT_LEAST))
                .atLeast(Quantity.of(100 - depth.value(), Units.PERCENT), "what a depth of " + depth.text() + " leaves", row.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Charge it before you draw more.")
                .finding());
    }

    private static void addFreezing(WorkingBuilder working, Quantity low, Quantity temperature) {
        Row row = PublishedTables.batterySpecificGravity().find("charge", low);
        if (row == null) {
            working.finding(Finding.notKnown(
                    "At " + low.text() + " of charge there is no published freezing point; a flat battery freezes first.",
                    temperature, PublishedTables.batterySpecificGravity().source(),
                    new MissingFigure("", "freezing point of the acid at " + low.text() + " of charge", "the battery's maker; until then keep it above 0 °C")));
            return;
        }
        working.finding(Comparison.of("The temperature of the battery", temperature)
                .atLeast(row.quantity("freezing-point"), "the freezing point of its acid with " + low.text() + " of charge", row.source())
                .exact()
                .otherwise(Verdict.STOP, "Do not charge a battery that may be frozen: bring it into the warm and look at its case first.")
                .finding());
    }

    static void addSlips(WorkingBuilder working, ChargeTable table, Values values, boolean withCapacity) {
        working.slip(
                "share-of-the-full-voltage", "charge-at-least", "The voltage taken as a share of the full voltage",
                "From full to empty the voltage falls by 1 V or less, not to nothing.", ChargeFormulas.SHARE_OF_FULL_VOLTAGE, values);
        working.slip(
                "what-is-gone-for-what-is-left", "charge-at-least", "What is gone used in place of what is left",
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
                    "left-for-put-back", "deficit", "What is left used in place of what is to be put back", "Put back what is missing.",
                    ChargeFormulas.LEFT_FOR_DEFICIT, values);
        }
    }
}
