package loomwright.protection;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** The checks of a conductor against the heat of a short circuit. */
final class HeatingFindings {
    private HeatingFindings() {}

    static void add(WorkingBuilder working, Entries entries, Values values, Quantity least, Source source) {
        if (least != null && entries.has("size")) {
            Comparison size = Comparison.of("The cross-section of the conductor", values.of(HeatingFormulas.SIZE))
                    .atLeast(least, "what the short circuit asks for", source)
                    .otherwise(Verdict.STOP, "Take a thicker conductor, a device that opens sooner, or one nearer to the source.");
            if (entries.isAssumed("insulation") && !entries.has("k")) {
                size.assuming("thermoplastic insulation for 90 °C, which fails first");
            }
            working.finding(size.finding());
        }
        if (least != null) {
            warnOfLongTime(
                    working, "The time until the device has opened", values.of(HeatingFormulas.TIME), source,
                    "Heat leaves the conductor by then, so the least size comes out on the large side. Treat it as an overload: hold the "
                            + "ampacity against the rating of the device.");
        }
        if (working.stated("longest-time") != null) {
            warnOfLongTime(
                    working, "The time that the conductor stands", working.stated("longest-time"), source,
                    "Take it as \u201cmore than " + HeatingFormulas.VALID_TO.text()
                            + "\u201d and no more. For longer times hold the ampacity against the rating of the device.");
        }
    }

    /** Beyond its time the equation is only a bound. */
    static void warnOfLongTime(WorkingBuilder working, String what, Quantity time, Source source, String remedy) {
        Comparison valid = Comparison.of(what, time)
                .atMost(HeatingFormulas.VALID_TO, "the time in which all heat may be taken to stay in the copper", source)
                .exact()
                .otherwise(Verdict.CAUTION, remedy);
        if (!valid.holds()) {
            working.finding(valid.finding());
        }
    }
}
