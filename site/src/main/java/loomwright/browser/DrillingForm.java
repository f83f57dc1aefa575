package loomwright.browser;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.DrilledPanel;
import loomwright.circuit.page.DrillingMarkup;
import loomwright.markup.Links;
import loomwright.worked.EntryFault;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** The panel to be drilled: its form, and the sheet that follows what is typed. */
final class DrillingForm {
    private final HTMLElement form;
    private final HTMLElement sheet;
    private final TypedFields fields;
    private FaultNotes notes;
    private DrilledPanel shown;

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
            HTMLElement more = form.querySelector("details");
            boolean open = more != null && more.getAttribute("open") != null;
            String focused = Focus.idWithin(form);
            form.setInnerHTML(DrillingMarkup.form(panel));
            if (open) {
                form.querySelector("details").setAttribute("open", "");
            }
            Focus.to(focused);
            notes = new FaultNotes(form, DrillingMarkup.PLACE);
            shown = panel;
        }
        List<EntryFault> faults = panel.isEmpty() ? List.of() : panel.outcome().faults();
        notes.show(faults, newFaults);
        Repaint.inside(sheet, DrillingMarkup.sheet(new Links(""), circuit));
    }
}
