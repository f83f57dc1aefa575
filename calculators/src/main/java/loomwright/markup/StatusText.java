package loomwright.markup;

import loomwright.worked.Finding;
import loomwright.worked.Result;
import loomwright.worked.Verdict;
import loomwright.worked.Working;

/** One sentence for a screen reader after a change: the first result and the count of checks that did not pass. */
public final class StatusText {
    private StatusText() {}

    /** The sentence, such as {@code Voltage drop 0.511 V, 1 caution}. */
    public static String of(Place place, Working working) {
        Result first = ResultsMarkup.first(place, working);
        StringBuilder text = new StringBuilder();
        if (first != null) {
            text.append(first.output().label()).append(' ').append(first.quantity().text());
        }
        count(text, working, Verdict.CAUTION, " caution", " cautions");
        count(text, working, Verdict.STOP, " stop", " stops");
        return text.toString();
    }

    private static void count(StringBuilder text, Working working, Verdict verdict, String one, String more) {
        int count = 0;
        for (Finding finding : working.findings()) {
            count += finding.verdict() == verdict ? 1 : 0;
        }
        if (count > 0) {
            text.append(", ").append(count).append(count == 1 ? one : more);
        }
    }
}
