package loomwright.browser;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.PartFault;
import loomwright.circuit.page.PartFormMarkup;
import loomwright.worked.ChoiceField;
import loomwright.worked.EntryFault;
import loomwright.worked.Field;
import org.teavm.jso.dom.html.HTMLElement;

/** The form of the part that is being changed. */
final class PartForm {
    private final HTMLElement form;
    /** What was typed and cannot be used, by {@code part/field}. */
    private final Map<String, String> drafts = new HashMap<>();
    /** Why, by the same. */
    private final Map<String, PartFault> refused = new HashMap<>();
    private final TypedFields fields;
    private FaultNotes notes;
    private Part part;

    PartForm(HTMLElement form) {
        this.form = form;
        this.fields = new TypedFields(form.getOwnerDocument(), PartFormMarkup.PLACE);
    }

    TypedFields fields() {
        return fields;
    }

    boolean hasDrafts() {
        return !drafts.isEmpty();
    }

    void dropDrafts() {
        drafts.clear();
        refused.clear();
    }

    /** Forgets what was typed for parts that are no more. */
    void dropDraftsOfMissing(Circuit circuit) {
        for (String place : new ArrayList<>(drafts.keySet())) {
            if (circuit.part(place.substring(0, place.indexOf('/'))) == null) {
                drafts.remove(place);
                refused.remove(place);
            }
        }
    }

    /** Why entries cannot be used. */
    List<PartFault> refused() {
        return new ArrayList<>(refused.values());
    }

    /** Shows a part; the focus stays in the same field if it was in one. */
    void show(Circuit circuit, String id) {
        boolean same = part != null && part.id().equals(id);
        part = circuit.part(id);
        String markup = PartFormMarkup.of(circuit, id, drafts);
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
    }

    void refuse(String key, String text, List<PartFault> faults) {
        drafts.put(part.id() + "/" + key, text);
        refused.put(part.id() + "/" + key, faults.get(0));
    }

    void accept(String key) {
        drafts.remove(part.id() + "/" + key);
        refused.remove(part.id() + "/" + key);
    }

    /** Shows the faults of this part, of entries and of what does not go together. */
    void showFaults(List<PartFault> ofCircuit, boolean newOnes) {
        List<EntryFault> faults = new ArrayList<>();
        List<PartFault> all = refused();
        all.addAll(ofCircuit);
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

    /** Whether a field was left empty that now holds what is usual. */
    boolean isFilledAnew(String key) {
        int at = part.kind().indexOf(key);
        Field field = at < 0 ? null : part.kind().fields().get(at);
        return field != null && !(field instanceof ChoiceField) && fields.text(key).isBlank() && !part.text(key).isEmpty();
    }
}
