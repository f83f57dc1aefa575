package loomwright.circuit.page;

import java.util.List;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.check.FigureToGet;
import loomwright.circuit.check.FindingGroup;
import loomwright.circuit.sheet.Designations;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.worked.Verdict;
import loomwright.markup.Words;

/** What was found: what to change, what to decide, which figures to get; the checks that passed are folded away. */
final class FoundMarkup {
    private final Links links;
    private final Examination examination;
    private final FoundItem item;
    private final boolean live;
    private final boolean opening;

    private FoundMarkup(Links links, Examination examination, boolean live, boolean opening) {
        this.links = links;
        this.examination = examination;
        this.item = new FoundItem(links, examination);
        this.live = live;
        this.opening = opening;
    }

    /** On the page of a whole circuit as it is printed, where each finding opens its working. */
    static String printed(Links links, Examination examination) {
        return new FoundMarkup(links, examination, false, true).written(true);
    }

    /**
     * In the page, where a finding leads to its part.
     *
     * @param withPassed whether the checks that passed are written too, or only counted, since nobody has unfolded them
     */
    static String live(Links links, Examination examination, boolean withPassed) {
        return new FoundMarkup(links, examination, true, true).written(withPassed);
    }

    /** In a lesson: it may stand in a site, or on paper, without the other lessons. */
    static String alone(Links links, Examination examination) {
        return new FoundMarkup(links, examination, false, false).written(true);
    }

    private String written(boolean withPassed) {
        Html html = new Html().tag("<p>").text(Words.sentence(Words.capital(FindingGroup.counted(examination)))).tag(
                " A check that passed means this one comparison, on its assumption and by its source. It does not say that the circuit is free of danger.</p>");
        html.tag("<div class=\"findings\">");
        group(html, "circuit-change", FindingGroup.CHANGE);
        group(html, "circuit-decide", FindingGroup.DECIDE);
        figures(html);
        html.tag("<details id=\"circuit-passed\"><summary>").text(FindingGroup.counted(examination.count(Verdict.PASSED), "check") + " passed").tag("</summary>");
        html.tag("<div class=\"passed\">").tag(withPassed ? PassedMarkup.of(links, examination, opening) : "").tag("</div>");
        return html.tag("</details></div>").toString();
    }

    private void group(Html html, String id, FindingGroup group) {
        if (examination.count(group.verdict()) == 0) {
            return;
        }
        html.tag("<h3").attribute("id", id).tag(">").text(group.title()).tag("</h3><ul>");
        for (CircuitFinding found : examination.findings()) {
            if (found.finding().verdict() == group.verdict()) {
                item.open(html, found);
                if (opening) {
                    item.working(html, found);
                }
                if (live) {
                    item.moves(html, found, found.partId());
                }
                html.tag("</li>");
            }
        }
        html.tag("</ul>");
    }

    /** What several parts lack alike stands in one row. */
    private void figures(Html html) {
        List<FigureToGet> figures = FigureToGet.of(examination);
        if (figures.isEmpty()) {
            return;
        }
        html.tag("<h3 id=\"circuit-figures\">").text(FindingGroup.FIGURES.title()).tag("</h3><p>No fault, but not shown either way: these checks wait for a figure. ");
        html.tag("Typed in once, it serves all devices of that kind and rating.</p><ul class=\"figures-to-get\">");
        for (FigureToGet figure : figures) {
            html.tag("<li class=\"finding\"").attribute("data-verdict", Verdict.NOT_KNOWN.key()).tag("><p><strong>");
            html.text(Words.capital(figure.name())).tag("</strong>. ");
            html.text(figure.instead().isEmpty() ? "" : "What stands in its place is " + figure.instead() + ". ").text("Look at " + Words.sentence(figure.where())).tag(" For ");
            parts(html, figure);
            html.tag("</p></li>");
        }
        html.tag("</ul>");
    }

    /** A part leads to the very field that takes the figure. */
    private void parts(Html html, FigureToGet figure) {
        Designations designations = item.designations();
        for (int i = 0; i < figure.partIds().size(); i++) {
            String id = figure.partIds().get(i);
            html.text(i == 0 ? "" : ", ");
            if (live && !figure.fieldKey().isEmpty()) {
                item.field(html, id, figure.fieldKey(), designations.of(id));
            } else {
                html.text(designations.of(id));
            }
        }
        html.text(".");
    }
}
