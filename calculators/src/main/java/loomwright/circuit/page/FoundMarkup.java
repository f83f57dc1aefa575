package loomwright.circuit.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.PartKind;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Designations;
import loomwright.markup.FindingsMarkup;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.SourceMarkup;
import loomwright.markup.Words;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/** What was found, worst first; the checks that passed are folded away. */
final class FoundMarkup {
    private static final List<Check> BY_SIZE = List.of(
            Check.OPERATING_POINT, Check.AMPACITY, Check.CONDUCTOR_PROTECTED, Check.SHORT_CIRCUIT_HEAT, Check.DEVICE_LOADING, Check.VOLTAGE_DROP);

    private final Links links;
    private final Examination examination;
    private final Circuit circuit;
    private final Designations designations;
    private final boolean live;

    private FoundMarkup(Links links, Examination examination, boolean live) {
        this.links = links;
        this.examination = examination;
        this.circuit = examination.circuit();
        this.designations = Designations.of(circuit);
        this.live = live;
    }

    static String of(Links links, Examination examination, boolean live) {
        return new FoundMarkup(links, examination, live).written();
    }

    /** How many of each, in words. */
    static String counted(Examination examination) {
        return counted(examination.count(Verdict.STOP), "stop") + ", " + counted(examination.count(Verdict.CAUTION), "caution") + ", "
                + counted(examination.count(Verdict.PASSED), "check") + " passed";
    }

    private static String counted(int count, String what) {
        return (count == 0 ? "no" : Integer.toString(count)) + " " + what + (count == 1 ? "" : "s");
    }

    private String written() {
        Html html = new Html().tag("<p>").text(Words.sentence(capital(counted(examination)))).tag(
                " A check that passed means this one comparison, on its assumption and by its source. It does not say that the circuit is free of danger.</p>");
        html.tag("<div class=\"findings\">");
        list(html, false);
        html.tag("<details id=\"circuit-passed\"><summary>").text(counted(examination.count(Verdict.PASSED), "check") + " passed").tag("</summary>");
        list(html, true);
        return html.tag("</details></div>").toString();
    }

    private static String capital(String text) {
        return text.startsWith("no ") ? "N" + text.substring(1) : text;
    }

    private void list(Html html, boolean passed) {
        html.tag("<ul>");
        List<CircuitFinding> left = new ArrayList<>();
        for (CircuitFinding finding : examination.findings()) {
            if (passed == (finding.finding().verdict() == Verdict.PASSED)) {
                left.add(finding);
            }
        }
        while (!left.isEmpty()) {
            CircuitFinding first = left.remove(0);
            item(html, first);
            if (first.finding().verdict() == Verdict.CAUTION) {
                folded(html, alike(first, left));
            }
        }
        html.tag("</ul>");
    }

    /** Takes out the cautions of the same check. */
    private static List<CircuitFinding> alike(CircuitFinding first, List<CircuitFinding> left) {
        List<CircuitFinding> alike = new ArrayList<>();
        for (CircuitFinding finding : left) {
            if (finding.check() == first.check() && finding.finding().verdict() == Verdict.CAUTION) {
                alike.add(finding);
            }
        }
        left.removeAll(alike);
        return alike;
    }

    /** Cautions of one check say nearly the same; behind the first they are folded away. */
    private void folded(Html html, List<CircuitFinding> alike) {
        if (alike.isEmpty()) {
            return;
        }
        html.tag("<li class=\"alike\"><details").attribute("id", "alike-" + alike.get(0).check().ordinal()).tag("><summary>");
        html.text(counted(alike.size(), "more caution") + " of this check: " + alike.get(0).check().label()).tag("</summary><ul>");
        for (CircuitFinding finding : alike) {
            item(html, finding);
        }
        html.tag("</ul></details></li>");
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
        if (live && finding.verdict() != Verdict.PASSED) {
            moves(html, found);
        }
        html.tag("</li>");
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
