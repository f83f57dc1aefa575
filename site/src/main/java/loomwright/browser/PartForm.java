package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.PartFault;
import loomwright.circuit.page.PartFormMarkup;
import loomwright.units.Shown;
import loomwright.worked.ChoiceField;
import loomwright.worked.EntryFault;
import loomwright.worked.Field;
import org.teavm.jso.dom.html.HTMLElement;

/** The form of the part that is being changed. */
final class PartForm {
    private final HTMLElement form;
    private final HTMLElement head;
    private final TypedFields fields;
    private FaultNotes notes;
    private Part part;

    PartForm(HTMLElement form, HTMLElement head) {
        this.form = form;
        this.head = head;
        this.fields = new TypedFields(form.getOwnerDocument(), PartFormMarkup.PLACE);
    }

    TypedFields fields() {
        return fields;
    }

    /** Shows a part; the focus stays in the same field if it was in one. */
    void show(Circuit circuit, String id, Drafts drafts) {
        boolean same = part != null && part.id().equals(id);
        part = circuit.part(id);
        Repaint.inside(head, PartFormMarkup.head(circuit, id));
        String markup = PartFormMarkup.of(circuit, id, drafts.texts(), UnitChoice.now());
        if (same) {
            Refill.inside(form, markup);
        } else {
            form.setInnerHTML(markup);
        }
        notes = new FaultNotes(form, PartFormMarkup.PLACE);
    }

    /** The part shown, after a change that its fields show already. */
    void follow(Circuit circuit) {
        part = circuit.part(part.id());
        Repaint.inside(head, PartFormMarkup.head(circuit, part.id()));
    }

    /** Shows the faults of this part, of entries and of what does not go together. */
    void showFaults(List<PartFault> all, boolean newOnes) {
        List<EntryFault> faults = new ArrayList<>();
        for (PartFault fault : all) {
            if (fault.partId().equals(part.id())) {
                String key = form.querySelector("[data-input='" + fault.fieldKey() + "']") == null ? "name" : fault.fieldKey();
                faults.add(new EntryFault(key, fault.message()));
            }
        }
        notes.show(faults, newOnes);
        HTMLElement marked = form.querySelector("details [aria-invalid]");
        if (marked != null) {
            form.querySelector("details").setAttribute("open", "");
        }
    }

    boolean isChoice(String key) {
        int at = part.kind().indexOf(key);
        return at >= 0 && part.kind().fields().get(at) instanceof ChoiceField;
    }

    /** Shows what is usual in the boxes that were left empty. The box that has the focus is the reader's: nothing is written into it. */
    void fillUp() {
        String focused = Focus.idWithin(form);
        for (Field field : part.kind().fields()) {
            String key = field.key();
            if (isShown(key) && !isChoice(key) && !PartFormMarkup.PLACE.id(key).equals(focused)
                    && fields.text(key).isBlank() && !part.text(key).isEmpty()) {
                fields.show(key, Shown.text(UnitChoice.now(), field, part.text(key)));
                Dom.takeWhole(fields.box(key));
            }
        }
    }

    private boolean isShown(String key) {
        return form.querySelector("[data-input='" + key + "']") != null;
    }
}
