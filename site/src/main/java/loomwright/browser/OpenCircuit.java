package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;

/** One of the circuits of this device as it is open in this tab: its steps, what could not be used, and where it is kept. */
final class OpenCircuit {
    private final CircuitKeeper keeper;
    private final List<Left> left = new ArrayList<>();
    private CircuitHistory history;
    private Drafts drafts;
    private String chosen;

    /** A circuit that another one took the place of, and its drafts. */
    private record Left(Circuit circuit, Drafts drafts) {}

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

    /** Drafts that come with another circuit. Those of this one come back with it. */
    void take(Drafts others) {
        left.add(new Left(now(), drafts));
        drafts = others;
    }

    /** The circuit before, with what was typed for it and could not be used when another took its place. */
    void back() {
        history.back();
        drafts = new Drafts();
        for (Left each : left) {
            drafts = each.circuit == now() ? each.drafts : drafts;
        }
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
