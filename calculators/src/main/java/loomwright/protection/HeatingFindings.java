package loomwright.protection;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** The checks of a conductor against the heat of a short circuit. */
final class HeatingFindings {
    private HeatingFindings() {}

    static void add(WorkingBuilder working, Entries entries, Values values, Quantity least, Row row) {
        boolean sized = entries.has("size");
        if (least != null && sized) {
            against(working, values.of(HeatingFormulas.SIZE), least, row);
        }
        if (least != null && values.of(HeatingFormulas.TIME).base() > HeatingFormulas.VALID_TO.base()) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "The time of " + values.of(HeatingFormulas.TIME).text(3) + " is above the " + HeatingFormulas.VALID_TO.text()
                            + " the equation is made for. Heat leaves the conductor by then, so the least size comes out on the large "
                                    + "side.",
                    values.of(HeatingFormulas.TIME), HeatingFormulas.VALID_TO, row.source(),
                    "Treat it as an overload: hold the ampacity against the rating of the device."));
        }
        Quantity longest = working.stated("longest-time");
        if (longest != null && longest.base() > HeatingFormulas.VALID_TO.base()) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "The time found is above the " + HeatingFormulas.VALID_TO.text()
                            + " the equation is made for: take it as \u201cmore than " + HeatingFormulas.VALID_TO.text() + "\u201d and no more.",
                    longest, HeatingFormulas.VALID_TO, row.source(), "For longer times hold the ampacity against the rating of the device."));
        }
    }

    private static void against(WorkingBuilder working, Quantity size, Quantity least, Row row) {
        boolean passed = size.base() >= least.base() * (1 - 1e-9);
        working.finding(new Finding(
                passed ? Verdict.PASSED : Verdict.STOP,
                "The conductor of " + size.text(4) + " is " + (passed ? "at least" : "below") + " the " + least.text(4)
                        + " that the short circuit asks for.",
                size, least, row.source(),
                passed ? "" : "Take a thicker conductor, a device that opens sooner, or one nearer to the source."));
    }
}
