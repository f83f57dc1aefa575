package loomwright.circuit.hazard;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;

/** Where the circuits with one mistake each are gathered. */
final class Plot {
    /**
     * A right circuit with one mistake in it.
     *
     * @param place the part it was planted at
     * @param circuit the circuit with it
     * @param blamed a finding has to lie at one of these parts, or name one of them
     */
    record Planted(String place, Circuit circuit, List<String> blamed) {}

    private final List<Planted> planted = new ArrayList<>();

    /** The mistake lies in the part itself. */
    void add(String place, Circuit circuit) {
        add(place, circuit, List.of(place));
    }

    void add(String place, Circuit circuit, List<String> blamed) {
        planted.add(new Planted(place, circuit, List.copyOf(blamed)));
    }

    List<Planted> all() {
        return List.copyOf(planted);
    }
}
