package loomwright.circuit.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.Part;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.Extent;
import loomwright.markup.Html;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Verdict;

/** The drawing of a circuit: a row a part, its symbol on the line and its words beside it. In the page each row is a button. */
public final class PlanMarkup {
    /** Nothing can be chosen: on paper, and without scripts. */
    public static final String NOTHING_CHOSEN = "";

    private final Circuit circuit;
    private final Examination examination;
    private final Designations designations;
    private final Branching branching;
    private final Set<String> faulty;
    private final String chosen;

    private PlanMarkup(Circuit circuit, Examination examination, Extent extent, Set<String> faulty, String chosen) {
        this.circuit = circuit;
        this.examination = examination;
        this.designations = Designations.of(circuit);
        this.branching = Branching.of(circuit, extent);
        this.faulty = faulty;
        this.chosen = chosen;
    }

    /**
     * A drawing, row by row, so that a page paints only the rows that changed.
     *
     * @param before what stands before the rows
     * @param after what stands behind them
     */
    public record Plan(String before, List<String> rows, String after) {
        public String whole() {
            Html html = new Html().tag(before);
            for (String row : rows) {
                html.tag(row);
            }
            return html.tag(after).toString();
        }
    }

    /** The drawing as it is printed. */
    static String printed(Examination examination, Extent extent) {
        return new PlanMarkup(examination.circuit(), examination, extent, new HashSet<>(), NOTHING_CHOSEN).plan().whole();
    }

    /**
     * The drawing with a row to choose.
     *
     * @param faulty the parts that need another look
     * @param chosen the part whose figures are shown
     */
    public static Plan of(Circuit circuit, Examination examination, Set<String> faulty, String chosen) {
        return new PlanMarkup(circuit, examination, Extent.WHOLE, faulty, chosen).plan();
    }

    private Plan plan() {
        List<String> rows = new ArrayList<>();
        for (Node node : branching.order()) {
            rows.add(row(node));
        }
        String next = chosen.equals(NOTHING_CHOSEN) ? "" : NextStep.words(circuit);
        Html after = new Html().tag("</ol>");
        if (!next.isEmpty()) {
            after.tag("<p class=\"next-step\">").text(next).tag("</p>");
        }
        String before = chosen.equals(NOTHING_CHOSEN)
                ? "<ol class=\"plan\">"
                : "<p class=\"help\" id=\"plan-help\">Press a part to change it. The arrow keys go from part to part.</p><ol class=\"plan\" aria-describedby=\"plan-help\">";
        return new Plan(SheetName.of(circuit) + before, List.copyOf(rows), after.toString());
    }

    private String row(Node node) {
        Html html = new Html();
        Part part = node.part();
        Verdict worst = worst(part.id());
        boolean isChosen = part.id().equals(chosen);
        html.tag("<li").attribute("data-part", part.id());
        if (faulty.contains(part.id())) {
            html.tag(" data-verdict=\"fault\"");
        } else if (worst != null) {
            html.attribute("data-verdict", worst.key());
        }
        html.tag(">").tag(PlanRow.svg(branching, node));
        html.tag(chosen.equals(NOTHING_CHOSEN)
                ? "<span class=\"pick\">"
                : "<button type=\"button\" class=\"pick\" aria-pressed=\"" + isChosen + "\" tabindex=\"" + (isChosen ? "0" : "-1") + "\">");
        html.tag("<strong>").text(designations.titled(part.id())).tag("</strong> <span class=\"what\">").text(PartWords.of(part));
        html.tag("</span> ").tag(state(node)).tag(fedBy(part)).tag(mark(part.id(), worst));
        html.tag(chosen.equals(NOTHING_CHOSEN) ? "</span></li>" : "</button></li>");
        return html.toString();
    }

    private String fedBy(Part part) {
        Html html = new Html();
        if (!part.fedBy().isEmpty()) {
            html.tag("<span class=\"unseen\">Fed by ").text(designations.of(part.fedBy())).tag(".</span> ");
        }
        if (!part.triggeredFrom().isEmpty()) {
            html.tag("<span class=\"what\">Trigger from ").text(designations.of(part.triggeredFrom())).tag(".</span> ");
        }
        return html.toString();
    }

    private String state(Node node) {
        if (examination == null || examination.solution() == null) {
            return "";
        }
        double least = examination.solution().leastVolts(node);
        if (Double.isNaN(least)) {
            return "";
        }
        Html html = new Html().tag("<span class=\"what reads\"><span class=\"unseen\">At most </span><span>");
        html.text(Quantity.of(examination.solution().designAmperes(node), Units.AMPERE).text(3)).tag("</span><span class=\"unseen\">, at least </span><span>");
        return html.text(Quantity.of(least, Units.VOLT).text(4)).tag("</span><span class=\"unseen\">.</span></span> ").toString();
    }

    private Verdict worst(String id) {
        List<CircuitFinding> found = examination == null ? List.of() : examination.findingsOn(id);
        return found.isEmpty() ? null : found.get(0).finding().verdict();
    }

    private String mark(String id, Verdict worst) {
        if (faulty.contains(id)) {
            return "<span class=\"mark\">Needs another look</span>";
        }
        boolean matters = worst == Verdict.STOP || worst == Verdict.CAUTION;
        return matters ? "<span class=\"mark\">" + (worst == Verdict.STOP ? "Change this" : "Decide this") + "</span>" : "";
    }
}
