package loomwright.browser;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.PartFault;
import loomwright.circuit.check.Examination;
import loomwright.circuit.page.CircuitMarkup;
import loomwright.circuit.page.PlanMarkup;
import loomwright.circuit.page.Sheet;
import loomwright.markup.Links;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;
import org.teavm.jso.dom.xml.NodeList;

/** Drawing, findings and sheets. What cannot be worked out leaves the last good figures in place, marked as old. */
final class CircuitView {
    /** Sheets follow a moment later, so that typing is not held up by tables far below. */
    private static final int PAUSE_MILLISECONDS = 120;

    /** Up to so many parts all sheets are shown at once. */
    private static final int SMALL_CIRCUIT = 100;

    private static final Links LINKS = new Links("");

    private final HTMLElement plan;
    private final HTMLElement rows;
    private final CircuitDrawing drawing;
    private final Map<Sheet, Circuit> painted = new HashMap<>();
    private final HTMLElement sheets;
    private final HTMLElement faultList;
    /** The last circuit that could be worked out; null if there was none. */
    private Examination good;
    private int timer;

    CircuitView(HTMLDocument document) {
        this.plan = document.getElementById("circuit-plan");
        this.rows = document.getElementById("circuit-rows");
        this.drawing = new CircuitDrawing(rows);
        this.sheets = document.getElementById("circuit-sheets");
        this.faultList = document.getElementById("circuit-faults");
    }

    /**
     * Shows a circuit.
     *
     * @param faults what stands in the way: entries that cannot be used, and what does not go together
     * @param soon whether the reader is still typing
     */
    void show(Examination examination, List<PartFault> faults, String chosen, boolean soon) {
        Circuit circuit = examination.circuit();
        if (examination.faults().isEmpty()) {
            good = examination;
        }
        Set<String> faulty = new HashSet<>();
        for (PartFault fault : faults) {
            faulty.add(fault.partId());
        }
        drawing.show(PlanMarkup.of(circuit, examination, faulty, chosen));
        // The drawing follows the circuit; only an entry that cannot be used leaves it behind.
        Dom.mark(plan, "old", faults.size() > examination.faults().size());
        Dom.mark(sheets, "old", !faults.isEmpty());
        Repaint.inside(faultList, faults.isEmpty() ? "" : CircuitMarkup.faults(circuit, faults));
        Window.clearTimeout(timer);
        if (soon) {
            timer = Window.setTimeout(() -> showSheets(circuit, 0), PAUSE_MILLISECONDS);
        } else {
            showSheets(circuit, 0);
        }
    }

    /** Shows the sheets from one on. Those of a large circuit follow one by one, so that a key pressed in between is not held up. */
    private void showSheets(Circuit circuit, int from) {
        boolean all = circuit.parts().size() <= SMALL_CIRCUIT;
        for (int i = from; good != null && i < CircuitMarkup.FOLLOWING.size(); i++) {
            Sheet sheet = CircuitMarkup.FOLLOWING.get(i);
            if (painted.get(sheet) != circuit) {
                painted.put(sheet, circuit);
                showSheet(sheet, circuit);
                if (!all) {
                    int next = i + 1;
                    timer = Window.setTimeout(() -> showSheets(circuit, next), 0);
                    return;
                }
            }
        }
    }

    private void showSheet(Sheet sheet, Circuit circuit) {
        HTMLElement element = sheets.getOwnerDocument().getElementById(CircuitMarkup.id(sheet));
        Repaint.inside(element, CircuitMarkup.inside(sheet, LINKS, good));
        NodeList<?> boxes = element.querySelectorAll("[data-reading]");
        for (int i = 0; i < boxes.getLength(); i++) {
            fill((HTMLInputElement) boxes.get(i), circuit);
        }
    }

    /** A box holds what was read, unless just that is being typed in other letters. */
    private static void fill(HTMLInputElement box, Circuit circuit) {
        Part part = circuit.part(box.getAttribute("data-reading"));
        if (part != null && !box.getValue().strip().equals(part.reading())) {
            box.setValue(part.reading());
        }
    }

    /** The row of a part. */
    HTMLElement row(String id) {
        return rows.querySelector("[data-part='" + id + "'] .pick");
    }
}
