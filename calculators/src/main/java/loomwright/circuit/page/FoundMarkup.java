package loomwright.circuit.page;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.PartKind;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.check.FigureToGet;
import loomwright.circuit.check.FindingGroup;
import loomwright.circuit.sheet.Designations;
import loomwright.markup.FindingsMarkup;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.SourceMarkup;
import loomwright.markup.Words;
import loomwright.worked.Finding;
import loomwright.worked.NextQuestion;
import loomwright.worked.Verdict;

/** What was found: what to change, what to decide, which figures to get; the checks that passed are folded away. */
final class FoundMarkup {
    private static final List<Check> BY_SIZE = List.of(
            Check.OPERATING_POINT, Check.AMPACITY, Check.CONDUCTOR_PROTECTED, Check.SHORT_CIRCUIT_HEAT, Check.DEVICE_LOADING, Check.VOLTAGE_DROP);

    private final Links links;
    private final Examination examination;
    private final Circuit circuit;
    private final Designations designations;
    private final boolean live;
    private final boolean opening;

    private FoundMarkup(Links links, Examination examination, boolean live, boolean opening) {
        this.links = links;
        this.examination = examination;
        this.circuit = examination.circuit();
        this.designations = Designations.of(circuit);
        this.live = live;
        this.opening = opening;
    }

    /** On the page of a whole circuit, where each finding opens its working. */
    static String of(Links links, Examination examination, boolean live) {
        return new FoundMarkup(links, examination, live, true).written();
    }

    /** In a lesson: it may stand in a site, or on paper, without the other lessons. */
    static String alone(Links links, Examination examination) {
        return new FoundMarkup(links, examination, false, false).written();
    }

    private String written() {
        Html html = new Html().tag("<p>").text(Words.sentence(Words.capital(FindingGroup.counted(examination)))).tag(
                " A check that passed means this one comparison, on its assumption and by its source. It does not say that the circuit is free of danger.</p>");
        html.tag("<div class=\"findings\">");
        group(html, "circuit-change", FindingGroup.CHANGE);
        group(html, "circuit-decide", FindingGroup.DECIDE);
        figures(html);
        html.tag("<details id=\"circuit-passed\"><summary>").text(FindingGroup.counted(examination.count(Verdict.PASSED), "check") + " passed").tag("</summary>");
        list(html, Verdict.PASSED);
        return html.tag("</details></div>").toString();
    }

    private void group(Html html, String id, FindingGroup group) {
        if (examination.count(group.verdict()) > 0) {
            html.tag("<h3").attribute("id", id).tag(">").text(group.title()).tag("</h3>");
            list(html, group.verdict());
        }
    }

    private void list(Html html, Verdict verdict) {
        html.tag("<ul>");
        for (CircuitFinding finding : examination.findings()) {
            if (finding.finding().verdict() == verdict) {
                item(html, finding);
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

    private void parts(Html html, FigureToGet figure) {
        for (int i = 0; i < figure.partIds().size(); i++) {
            String id = figure.partIds().get(i);
            html.text(i == 0 ? "" : ", ");
            if (live && !figure.fieldKey().isEmpty()) {
                html.tag("<button type=\"button\" class=\"quiet\"").attribute("data-go", id).tag(">").text(designations.of(id)).tag("</button>");
            } else {
                html.text(designations.of(id));
            }
        }
        html.text(".");
    }

    private void item(Html html, CircuitFinding found) {
        Finding finding = found.finding();
        FindingsMarkup.open(html, finding.verdict());
        html.tag("<strong>").text(Words.sentence(found.check().label())).tag("</strong> ");
        if (finding.words().indexOf(circuit.part(found.partId()).title()) < 0) {
            html.text(designations.titled(found.partId())).tag(": ");
        }
        html.text(Words.sentence(finding.words())).tag("</p>");
        FindingsMarkup.remedy(html, "What to change: ", finding);
        html.tag(SourceMarkup.paragraph(links, finding.source()));
        if (opening) {
            working(html, found);
        }
        if (live && finding.verdict() != Verdict.PASSED) {
            moves(html, found);
        }
        html.tag("</li>");
    }

    /** Plain links, so that they lead on without a script too. */
    private void working(Html html, CircuitFinding found) {
        NextQuestion working = Workings.of(examination, found);
        html.tag("<p class=\"working on-screen\">");
        if (working != null) {
            html.tag("<a").attribute("href", links.calculator(working.calculatorKey(), working.carried())).tag(">Open the working<span class=\"unseen\"> of ");
            html.text(found.check().label()).text(", ").text(designations.of(found.partId())).tag("</span></a> ");
        }
        String lesson = Workings.lesson(found.check());
        html.tag("<a").attribute("href", links.lesson(lesson)).tag(">Why: lesson ").text(lesson.substring(lesson.charAt(0) == '0' ? 1 : 0, lesson.indexOf('-'))).tag("</a></p>");
    }

    private void moves(Html html, CircuitFinding found) {
        String title = designations.titled(found.partId());
        PartKind kind = circuit.part(found.partId()).kind();
        html.tag("<p class=\"moves\"><button type=\"button\" class=\"quiet\" data-go=\"").text(found.partId()).tag("\">Change ").text(title);
        html.tag("</button>");
        if (BY_SIZE.contains(found.check()) && (kind == PartKind.CONDUCTOR || kind == PartKind.PROTECTION)) {
            html.tag(" <button type=\"button\" class=\"quiet\" data-smallest=\"").text(found.partId()).tag("\">Smallest size that passes<span class=\"unseen\"> for ");
            html.text(title).tag("</span></button>");
        }
        html.tag("</p>");
    }
}
