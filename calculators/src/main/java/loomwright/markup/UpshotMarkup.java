package loomwright.markup;

import java.util.List;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.Working;

/** What an example comes to, in sight beside its figures: the inside of {@code div.upshot}. Main results and the worst verdict. */
public final class UpshotMarkup {
    private UpshotMarkup() {}

    /** Of the printed example. */
    public static String printed(Place place, Working working) {
        return of(place, working, null);
    }

    /** Of the reader's own figures, with the results of the printed example beside them. */
    public static String own(Place place, Working own, Working printed) {
        return of(place, own, printed);
    }

    private static String of(Place place, Working working, Working printed) {
        return ResultsMarkup.main(place, working, printed) + verdict(working.findings());
    }

    private static String verdict(List<Finding> findings) {
        if (findings.isEmpty()) {
            return "";
        }
        Finding worst = findings.get(0);
        int open = 0;
        for (Finding finding : findings) {
            worst = finding.verdict().isWorseThan(worst.verdict()) ? finding : worst;
            open += finding.verdict() == Verdict.PASSED ? 0 : 1;
        }
        Html html = new Html().tag("<p class=\"worst\"").attribute("data-verdict", worst.verdict().key()).tag("><strong>");
        if (open == 0 && findings.size() > 1) {
            return html.tag(findings.size() + " checks passed.</strong></p>").toString();
        }
        html.text(Words.sentence(worst.verdict().words())).tag("</strong> ").text(Words.sentence(worst.words()));
        return html.tag(open > 1 ? " <span class=\"count\">One of " + open + " checks to look at.</span></p>" : "</p>").toString();
    }
}
