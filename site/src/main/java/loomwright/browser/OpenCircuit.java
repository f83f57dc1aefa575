package loomwright.browser;

import loomwright.circuit.Circuit;

/** One of the circuits of this device as it is open in this tab: its steps, what could not be used, and where it is kept. */
final class OpenCircuit {
    private final CircuitKeeper keeper;
    private CircuitHistory history;
    private Drafts drafts;
    private String chosen;

    OpenCircuit(CircuitKeeper keeper, Circuit circuit) {
        this.keeper = keeper;
        begin(circuit, new Drafts());
    }

    /** A circuit with no way back before it. */
    void begin(Circuit circuit, Drafts itsDrafts) {
        history = new CircuitHistory(circuit);
        drafts = itsDrafts;
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

    Drafts drafts() {
        return drafts;
    }

    void take(Drafts others) {
        drafts = others;
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
        return keeper.keep(now(), drafts);
    }
}
