package loomwright.circuit.page;

import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.check.FindingGroup;
import loomwright.markup.FindingsMarkup;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;
import loomwright.markup.Words;

/** What was found for one part, for the head of its form: what to change, what to decide, which figures to get. */
public final class PartFound {
    private PartFound() {}

    /** The findings that lie at the part, or hold it against another; what passed is counted. */
    public static String of(Links links, Examination examination, String id) {
        FoundItem item = new FoundItem(links, examination);
        Html html = new Html();
        int passed = 0;
        for (CircuitFinding found : examination.findings()) {
            if (found.concerns(id)) {
                Verdict verdict = found.finding().verdict();
                passed += verdict == Verdict.PASSED ? 1 : 0;
                if (verdict == Verdict.STOP || verdict == Verdict.CAUTION) {
                    item.open(html, found);
                    item.working(html, found);
                    item.moves(html, found, found.partId().equals(id) ? "" : found.partId());
                    html.tag("</li>");
                } else if (found.finding().missing() != null) {
                    figure(html, item, found);
                }
            }
        }
        String open = html.toString();
        String rest = FindingGroup.counted(passed, "check") + " passed here.";
        return open.isEmpty()
                ? "<p class=\"help\">" + (passed == 0 ? "Nothing has been checked here yet." : "Nothing to change or to decide here: " + rest) + "</p>"
                : "<ul class=\"findings\">" + open + "</ul><p class=\"help\">" + Words.capital(rest) + "</p>";
    }

    private static void figure(Html html, FoundItem item, CircuitFinding found) {
        MissingFigure missing = found.finding().missing();
        FindingsMarkup.open(html, Verdict.NOT_KNOWN);
        html.tag("<strong>").text(Words.capital(missing.name())).tag("</strong>. ").text("Look at " + Words.sentence(missing.where())).tag("</p>");
        if (!missing.key().isEmpty()) {
            html.tag("<p class=\"moves\">");
            item.field(html, found.partId(), missing.key(), "Enter it");
            html.tag("</p>");
        }
        html.tag("</li>");
    }
}
