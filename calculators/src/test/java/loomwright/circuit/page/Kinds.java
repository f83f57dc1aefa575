package loomwright.circuit.page;

import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.PartKind;

/** The trailer with the kinds of part that it lacks: an isolating switch, a relay and a source of charge. */
final class Kinds {
    static final String ISOLATOR;
    static final String RELAY;
    static final String SOURCE;
    private static final Circuit ALL;

    static {
        Circuit circuit = CircuitEdits.insertedBefore(Written.TRAILER, PartKind.ISOLATOR, "main-lead");
        ISOLATOR = added(circuit, Written.TRAILER);
        Circuit before = circuit;
        circuit = CircuitEdits.insertedBefore(circuit, PartKind.SWITCH, "pump-run");
        RELAY = added(circuit, before);
        circuit = CircuitEdits.changed(circuit, RELAY, "switching", "relay").circuit();
        before = circuit;
        circuit = CircuitEdits.added(circuit, PartKind.SOURCE, "fuse-panel");
        SOURCE = added(circuit, before);
        ALL = circuit;
    }

    private Kinds() {}

    static Circuit all() {
        return ALL;
    }

    /** The part that one circuit has and the other has not. */
    static String added(Circuit circuit, Circuit before) {
        return circuit.parts().stream().map(part -> part.id()).filter(id -> before.part(id) == null).findFirst().orElseThrow();
    }
}
