package loomwright.browser;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Edit;
import loomwright.circuit.PartFault;
import loomwright.markup.Fragment;

/** What was typed for parts of a circuit and cannot be used: it stands in its field until it is corrected or taken back, and is kept with the circuit. */
final class Drafts {
    private static final String NAME = "name";

    /** By {@code part/field}; an id holds no slash. */
    private final Map<String, String> texts = new HashMap<>();
    private final Map<String, PartFault> faults = new HashMap<>();

    boolean isEmpty() {
        return texts.isEmpty();
    }

    /** What was typed, by {@code part/field}. */
    Map<String, String> texts() {
        return texts;
    }

    /** Why it cannot be used. */
    List<PartFault> faults() {
        return new ArrayList<>(faults.values());
    }

    /** What came of typing a text: it is used, or remembered here. */
    void typed(String id, String key, String text, Edit edit) {
        String place = id + "/" + key;
        if (edit.circuit() != null) {
            texts.remove(place);
            faults.remove(place);
        } else {
            texts.put(place, text);
            faults.put(place, edit.faults().get(0));
        }
    }

    void drop() {
        texts.clear();
        faults.clear();
    }

    /** Forgets what was typed for parts that are no more. */
    void dropOfMissing(Circuit circuit) {
        for (String place : new ArrayList<>(texts.keySet())) {
            if (circuit.part(place.substring(0, place.indexOf('/'))) == null) {
                texts.remove(place);
                faults.remove(place);
            }
        }
    }

    /** As text to be kept. */
    String written() {
        return Fragment.write(texts);
    }

    /** What was kept for a circuit. Whatever does not belong to it is left out. */
    static Drafts read(String kept, Circuit circuit) {
        Drafts drafts = new Drafts();
        Map<String, String> texts = Fragment.read(kept);
        for (String place : texts.keySet()) {
            int slash = place.indexOf('/');
            String id = place.substring(0, Math.max(0, slash));
            String key = place.substring(slash + 1);
            if (circuit.part(id) != null && (key.equals(NAME) || circuit.part(id).kind().indexOf(key) >= 0)) {
                drafts.typed(id, key, texts.get(place), edit(circuit, id, key, texts.get(place)));
            }
        }
        return drafts;
    }

    /** A text typed into a field of a part, or as its name. */
    static Edit edit(Circuit circuit, String id, String key, String text) {
        return key.equals(NAME) ? CircuitEdits.named(circuit, id, text.strip()) : CircuitEdits.changed(circuit, id, key, text);
    }
}
