package loomwright.browser;

import java.util.HashSet;
import java.util.Set;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.page.PlanMarkup.Plan;
import org.teavm.jso.JSBody;
import org.teavm.jso.dom.html.HTMLElement;

/** The drawing on the page. While the parts stay the same only the rows that changed are painted. */
final class CircuitDrawing {
    private final HTMLElement element;
    private Plan shown;
    private final Set<String> rows = new HashSet<>();

    CircuitDrawing(HTMLElement element) {
        this.element = element;
    }

    /** Whether a part has no row yet, so that it cannot be pointed at. */
    boolean lacksAnyOf(Circuit circuit) {
        for (Part part : circuit.parts()) {
            if (!rows.contains(part.id())) {
                return true;
            }
        }
        return false;
    }

    void show(Circuit circuit, Plan plan) {
        rows.clear();
        for (Part part : circuit.parts()) {
            rows.add(part.id());
        }
        boolean sameRows = shown != null && shown.rows().size() == plan.rows().size() && shown.before().equals(plan.before())
                && shown.after().equals(plan.after());
        if (!sameRows) {
            Repaint.inside(element, plan.whole());
        }
        for (int i = 0; sameRows && i < plan.rows().size(); i++) {
            if (!shown.rows().get(i).equals(plan.rows().get(i))) {
                Repaint.item(row(element, i), plan.rows().get(i));
            }
        }
        shown = plan;
    }

    @JSBody(params = {"element", "place"}, script = "return element.querySelector('.plan').children[place];")
    private static native HTMLElement row(HTMLElement element, int place);
}
