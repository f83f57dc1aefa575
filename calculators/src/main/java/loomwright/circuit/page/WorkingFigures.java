package loomwright.circuit.page;

import java.util.HashMap;
import java.util.Map;
import loomwright.circuit.Node;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.quantity.Quantity;

/** What a calculator is asked for one finding. */
final class WorkingFigures {
    /** More digits than any page shows, so that the calculator comes to the same figure. */
    private static final int DIGITS = 9;

    final Examination examination;
    final CircuitFinding found;
    final Node node;
    final Map<String, String> entries = new HashMap<>();

    WorkingFigures(Examination examination, CircuitFinding found) {
        this.examination = examination;
        this.found = found;
        this.node = examination.circuit().node(found.partId());
    }

    Node other() {
        return found.otherId().isEmpty() ? node : examination.circuit().node(found.otherId());
    }

    Quantity figure() {
        return found.finding().figure();
    }

    Quantity limit() {
        return found.finding().limit();
    }

    void put(String key, Quantity value) {
        if (value != null) {
            entries.put(key, value.text(DIGITS));
        }
    }

    /** What was typed for a part, under the key that the calculator gives the same field. */
    void copy(Node from, String fieldKey, String key) {
        String text = from.part().text(fieldKey);
        if (!text.isEmpty()) {
            entries.put(key, text);
        }
    }

    static boolean isSame(Quantity one, Quantity other) {
        return one != null && other != null && one.isSame(other);
    }
}
