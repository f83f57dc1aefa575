package loomwright.browser;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.DrilledPanel;
import loomwright.circuit.page.DrillingMarkup;
import loomwright.markup.Links;
import loomwright.worked.Outcome;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** The panel to be drilled: its form, and the sheet that follows what is typed. */
final class DrillingForm {
    private static final Links LINKS = new Links("");

    private final HTMLElement form;
    private final HTMLElement sheet;
    private final TypedFields fields;
    private FaultNotes notes;
    /** The panel whose texts stand in the fields. */
    private DrilledPanel shown;
    /** The panel that was worked out last, and what came of it; null if nothing is to be drilled. */
    private DrilledPanel worked;
    private Outcome outcome;

    DrillingForm(HTMLDocument document) {
        this.form = document.getElementById("drilling-form");
        this.sheet = document.getElementById("drilling-sheet");
        this.fields = new TypedFields(document, DrillingMarkup.PLACE);
    }

    HTMLElement element() {
        return form;
    }

    TypedFields fields() {
        return fields;
    }

    /** What was typed here is what stands in the fields. */
    void typed(DrilledPanel panel) {
        shown = panel;
    }

    /**
     * Shows the panel of a circuit.
     *
     * @param newFaults whether to point out what was not pointed out before; while a reader types, that waits
     */
    void show(Circuit circuit, boolean newFaults) {
        DrilledPanel panel = circuit.panel();
        if (!panel.equals(shown)) {
            Refill.inside(form, DrillingMarkup.form(panel));
            notes = new FaultNotes(form, DrillingMarkup.PLACE);
            shown = panel;
        }
        if (!panel.equals(worked)) {
            outcome = panel.isEmpty() ? null : panel.outcome();
            worked = panel;
        }
        notes.show(outcome == null ? List.of() : outcome.faults(), newFaults);
        Repaint.inside(sheet, DrillingMarkup.sheet(LINKS, circuit, outcome));
    }
}
