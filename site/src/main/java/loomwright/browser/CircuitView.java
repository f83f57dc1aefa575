package loomwright.browser;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loomwright.circuit.Circuit;
import loomwright.circuit.PartFault;
import loomwright.circuit.check.Examination;
import loomwright.circuit.page.CircuitMarkup;
import loomwright.circuit.page.PlanMarkup;
import loomwright.markup.Links;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** Drawing, findings and sheets. What cannot be worked out leaves the last good figures in place, marked as old. */
final class CircuitView {
    /** Sheets follow a moment later, so that typing is not held up by tables far below. */
    private static final int PAUSE_MILLISECONDS = 120;

    private static final Links LINKS = new Links("");

    private final HTMLElement plan;
    private final HTMLElement rows;
    private final HTMLElement sheets;
    private final HTMLElement faultList;
    /** The last circuit that could be worked out; null if there was none. */
    private Examination good;
    private int timer;

    CircuitView(HTMLDocument document) {
        this.plan = document.getElementById("circuit-plan");
        this.rows = document.getElementById("circuit-rows");
        this.sheets = document.getElementById("circuit-sheets");
        this.faultList = document.getElementById("circuit-faults");
    }

    /**
     * Shows a circuit.
     *
     * @param refused entries that cannot be used
     * @param soon whether the reader is still typing
     */
    void show(Circuit circuit, Examination examination, List<PartFault> refused, Map<String, String> readings, String chosen, boolean soon) {
        List<PartFault> faults = new ArrayList<>(refused);
        faults.addAll(examination.faults());
        if (examination.faults().isEmpty()) {
            good = examination;
        }
        Set<String> faulty = new HashSet<>();
        for (PartFault fault : faults) {
            faulty.add(fault.partId());
        }
        Repaint.inside(rows, PlanMarkup.of(circuit, examination, faulty, chosen));
        Dom.mark(plan, "old", !refused.isEmpty());
        Dom.mark(sheets, "old", !faults.isEmpty());
        Repaint.inside(faultList, faults.isEmpty() ? "" : CircuitMarkup.faults(circuit, faults));
        Window.clearTimeout(timer);
        if (soon) {
            timer = Window.setTimeout(() -> showSheets(readings), PAUSE_MILLISECONDS);
        } else {
            showSheets(readings);
        }
    }

    private void showSheets(Map<String, String> readings) {
        if (good != null) {
            Repaint.inside(sheets, CircuitMarkup.sheets(LINKS, good, readings, true));
        }
    }

    /** The row of a part. */
    HTMLElement row(String id) {
        return rows.querySelector("[data-part='" + id + "'] .pick");
    }
}
