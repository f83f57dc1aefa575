package loomwright.browser;

import java.util.HashMap;
import java.util.Map;
import loomwright.circuit.Circuit;

/** One of the circuits of this device as it is open in this tab: its steps, its readings, and where it is kept. */
final class OpenCircuit {
    private final CircuitKeeper keeper;
    private CircuitHistory history;
    private Map<String, String> readings = new HashMap<>();
    private String chosen;

    OpenCircuit(CircuitKeeper keeper, Circuit circuit) {
        this.keeper = keeper;
        begin(circuit, readings);
    }

    /** A circuit with no way back before it. */
    void begin(Circuit circuit, Map<String, String> itsReadings) {
        history = new CircuitHistory(circuit);
        readings = itsReadings;
        chosen = circuit.supply().id();
    }

    CircuitKeeper keeper() {
        return keeper;
    }

    CircuitHistory history() {
        return history;
    }

    Circuit now() {
        return history.now();
    }

    Map<String, String> readings() {
        return readings;
    }

    void read(Map<String, String> others) {
        readings = others;
    }

    /** The part whose figures are shown; the battery if the one chosen is gone. */
    String chosen() {
        return now().part(chosen) == null ? now().supply().id() : chosen;
    }

    void choose(String id) {
        if (now().part(id) != null) {
            chosen = id;
        }
    }

    CircuitKeeper.Kept keep() {
        return keeper.keep(now(), readings);
    }
}
