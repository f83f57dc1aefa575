package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;

/** The circuit as it is and as it was: a list of circuits that never change, and the place in it. */
final class CircuitHistory {
    private static final int MOST_STEPS = 2000;

    private final List<Circuit> circuits = new ArrayList<>();
    private int at;
    private String typing = "";

    CircuitHistory(Circuit first) {
        circuits.add(first);
    }

    Circuit now() {
        return circuits.get(at);
    }

    /** A step of its own. */
    void put(Circuit circuit) {
        put(circuit, "");
    }

    /**
     * The next circuit. While a reader goes on typing in one field, it takes the place of the one before, so that a whole entry is one step back.
     *
     * @param field the field being typed in; empty for a step of its own
     */
    void put(Circuit circuit, String field) {
        boolean samePlace = !field.isEmpty() && field.equals(typing) && at > 0 && at == circuits.size() - 1;
        while (circuits.size() > at + 1) {
            circuits.remove(circuits.size() - 1);
        }
        if (samePlace) {
            circuits.set(at, circuit);
        } else {
            circuits.add(circuit);
            at++;
        }
        if (circuits.size() > MOST_STEPS) {
            circuits.remove(0);
            at--;
        }
        typing = field;
    }

    /** The reader has left the field. */
    void leaveField() {
        typing = "";
    }

    boolean canGoBack() {
        return at > 0;
    }

    boolean canGoForward() {
        return at < circuits.size() - 1;
    }

    void back() {
        at--;
        typing = "";
    }

    void forward() {
        at++;
        typing = "";
    }

    /** How many steps back there are. */
    int steps() {
        return at;
    }
}
