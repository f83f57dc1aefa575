package loomwright.circuit.page;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Designations;
import loomwright.markup.FindingsMarkup;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.SourceMarkup;
import loomwright.worked.Finding;
import loomwright.worked.NextQuestion;
import loomwright.worked.Verdict;
import loomwright.markup.Words;

/** One finding as an item of a list: its words, its source, where it is worked out and what can be done about it. */
final class FoundItem {
    private static final List<Check> BY_SIZE = List.of(
            Check.OPERATING_POINT, Check.AMPACITY, Check.CONDUCTOR_PROTECTED, Check.SHORT_CIRCUIT_HEAT, Check.DEVICE_LOADING, Check.VOLTAGE_DROP);

    private final Links links;
    private final Examination examination;
    private final Circuit circuit;
    private final Designations designations;

    FoundItem(Links links, Examination examination) {
        this.links = links;
        this.examination = examination;
        this.circuit = examination.circuit();
        this.designations = Designations.of(circuit);
    }

    Designations designations() {
        return designations;
    }

    /** The item without its end, so that what can be done may follow. */
    void open(Html html, CircuitFinding found) {
        Finding finding = found.finding();
        FindingsMarkup.open(html, finding.verdict());
        html.tag("<strong>").text(Words.sentence(found.check().label())).tag("</strong> ").tag(words(found)).tag("</p>");
        FindingsMarkup.remedy(html, "What to change: ", finding);
        html.tag(SourceMarkup.paragraph(links, finding.source()));
    }

    /** The words of a finding, its part before them where they do not name it. */
    String words(CircuitFinding found) {
        Html html = new Html();
        if (found.finding().words().indexOf(circuit.part(found.partId()).title()) < 0) {
            html.text(designations.titled(found.partId())).tag(": ");
        }
        return html.text(Words.sentence(found.finding().words())).toString();
    }

    /** The calculator with these figures and the lesson, plain links, so that they lead on without a script too; or the lines of the working. */
    void working(Html html, CircuitFinding found) {
        html.tag("<p class=\"working on-screen\">");
        boolean opens = calculator(html, found);
        String lesson = Workings.lesson(found.check());
        html.tag("<a").attribute("href", links.lesson(lesson)).tag(">Why: lesson ").text(lesson.substring(lesson.charAt(0) == '0' ? 1 : 0, lesson.indexOf('-'))).tag("</a></p>");
        if (!opens) {
            unfolded(html, found);
        }
    }

    /** The calculator with these figures, if one makes the same comparison: whether there is one. */
    boolean calculator(Html html, CircuitFinding found) {
        NextQuestion working = Workings.of(examination, found);
        if (working != null) {
            html.tag("<a").attribute("href", links.calculator(working.calculatorKey(), working.carried())).tag(">Open the working<span class=\"unseen\"> of ");
            html.text(found.check().label()).text(", ").text(designations.of(found.partId())).tag("</span></a> ");
        }
        return working != null;
    }

    /** What no calculator works out unfolds here. */
    void unfolded(Html html, CircuitFinding found) {
        List<String> lines = Unfolded.lines(examination, designations, found);
        if (lines.isEmpty()) {
            return;
        }
        html.tag("<details class=\"unfolds on-screen\"><summary>Show the working<span class=\"unseen\"> of ").text(found.check().label()).text(", ");
        html.text(designations.of(found.partId())).tag("</span></summary><ul>");
        for (String line : lines) {
            html.tag("<li>").text(line).tag("</li>");
        }
        html.tag("</ul></details>");
    }

    /** A button that leads to the field that takes a figure, for which a check at a part waits. */
    void field(Html html, String partId, String key, String words) {
        Node holder = holder(circuit.node(partId), key);
        html.tag("<button type=\"button\" class=\"quiet\"").attribute("data-go", holder == null ? partId : holder.id());
        if (holder != null) {
            html.attribute("data-field", key);
        }
        html.tag(">").text(words).tag("</button>");
    }

    /** The part that has the field: the one checked, the one held against it, the device before it, or the battery. */
    private Node holder(Node node, String key) {
        if (has(node, key)) {
            return node;
        }
        for (CircuitFinding found : examination.findingsOn(node.id())) {
            boolean waits = found.finding().missing() != null && found.finding().missing().key().equals(key) && !found.otherId().isEmpty();
            if (waits && has(circuit.node(found.otherId()), key)) {
                return circuit.node(found.otherId());
            }
        }
        return has(node.deviceBefore(), key) ? node.deviceBefore() : has(circuit.supply(), key) ? circuit.supply() : null;
    }

    private static boolean has(Node node, String key) {
        return node != null && node.kind().indexOf(key) >= 0;
    }

    /** Buttons that lead to a part, and that find its size. */
    void moves(Html html, CircuitFinding found, String leadTo) {
        Html buttons = new Html();
        if (!leadTo.isEmpty()) {
            buttons.tag("<button type=\"button\" class=\"quiet\"").attribute("data-go", leadTo).tag(">Change ").text(designations.titled(leadTo)).tag("</button>");
        }
        PartKind kind = circuit.part(found.partId()).kind();
        boolean bySize = BY_SIZE.contains(found.check()) && (kind == PartKind.CONDUCTOR || kind == PartKind.PROTECTION);
        if (bySize && found.finding().verdict() != Verdict.PASSED) {
            buttons.tag(" <button type=\"button\" class=\"quiet\"").attribute("data-smallest", found.partId());
            buttons.tag(">Smallest size that passes<span class=\"unseen\"> for ").text(designations.titled(found.partId())).tag("</span></button>");
        }
        if (!buttons.toString().isEmpty()) {
            html.tag("<p class=\"moves\">").tag(buttons.toString()).tag("</p>");
        }
    }
}
