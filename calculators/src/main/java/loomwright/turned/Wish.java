package loomwright.turned;

import loomwright.quantity.Quantity;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.Output;
import loomwright.worked.Result;
import loomwright.worked.Verdict;
import loomwright.worked.Working;

/**
 * What a working is wanted to give.
 *
 * @param output the result it is about; null if what is wanted is that no check ends in a stop
 * @param limit the value wanted; null with no output
 * @param atMost whether less than the limit is as good; otherwise more is
 */
public record Wish(Output output, Quantity limit, boolean atMost) {

    /** That no check ends in a stop. */
    public static Wish noStop() {
        return new Wish(null, null, true);
    }

    /** The wish that a working suggests for one of its results: the limit that a check holds it against, or what it gives now. */
    public static Wish suggested(Working working, Output output) {
        Result result = working.result(output.key());
        if (result == null) {
            return new Wish(output, null, true);
        }
        for (Finding finding : working.findings()) {
            if (finding.limit() != null && finding.figure() != null && finding.figure().isSame(result.quantity())) {
                boolean within = finding.verdict() == Verdict.PASSED || finding.verdict() == Verdict.NOT_KNOWN;
                boolean below = Comparison.atMost(result.quantity(), finding.limit());
                return new Wish(output, finding.limit().in(output.unit()), below == within || finding.verdict() == Verdict.CAUTION);
            }
        }
        return new Wish(output, result.quantity(), true);
    }

    /** What a working gives of what is wanted, as a number that can be held against {@link #least}; not a number if it gives nothing. */
    double given(Working working) {
        if (working == null) {
            return Double.NaN;
        }
        if (output == null) {
            for (Finding finding : working.findings()) {
                if (finding.verdict() == Verdict.STOP) {
                    return 1;
                }
            }
            return 0;
        }
        Result result = working.result(output.key());
        return result == null ? Double.NaN : result.quantity().base();
    }

    /** The number that parts what passes from what does not. */
    double border() {
        return output == null ? 0.5 : limit.base();
    }

    /** Whether that number is as wanted; a hair of rounding is let through. */
    boolean isMet(double given) {
        if (output == null) {
            return given < border();
        }
        Quantity figure = Quantity.ofBase(given, output.unit());
        return atMost ? Comparison.atMost(figure, limit) : Comparison.atLeast(figure, limit);
    }

    /** What a number that was given is called: a quantity, or what the checks say. */
    String said(double given) {
        return output != null ? Quantity.ofBase(given, output.unit()).text() : isMet(given) ? "no check stops" : "a check stops";
    }
}
