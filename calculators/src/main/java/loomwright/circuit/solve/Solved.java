package loomwright.circuit.solve;

import loomwright.circuit.Circuit;
import loomwright.circuit.Node;

/** A circuit in one situation, solved: voltage and current at every part, or the part that is starved. */
public final class Solved {
    private final Situation situation;
    private final CircuitNetwork network;
    private final OperatingPoint point;

    private Solved(Situation situation, CircuitNetwork network, OperatingPoint point) {
        this.situation = situation;
        this.network = network;
        this.point = point;
    }

    /** Solves a circuit in a situation. */
    public static Solved of(Circuit circuit, Situation situation) {
        return of(circuit, situation, false);
    }

    /** Solves a circuit with every part at the least resistance it may have: cold copper of the full area, joints and contacts perfect. */
    public static Solved withLeastResistance(Circuit circuit, Situation situation) {
        return of(circuit, situation, true);
    }

    private static Solved of(Circuit circuit, Situation situation, boolean least) {
        CircuitNetwork network = CircuitNetwork.of(circuit, situation, least);
        return new Solved(situation, network, Sweep.solve(network.network(), situation.sourceVolts()));
    }

    public Situation situation() {
        return situation;
    }

    /** Whether there is an operating point. */
    public boolean exists() {
        return point.exists();
    }

    /** The whole operating point. */
    OperatingPoint point() {
        return point;
    }

    /** Power the battery gives, the losses included. */
    public double sourceWatts() {
        return point.sourceWatts();
    }

    /** Power that all loads take together. */
    public double loadWatts() {
        return point.loadWatts();
    }

    /** All losses added up. */
    public double lostWatts() {
        return point.lostWatts();
    }

    /** Voltage behind a part, between its two conductors. */
    public double volts(Node node) {
        return point.volts(node.order());
    }

    /** Current through a part. */
    public double amperes(Node node) {
        return point.amperes(node.order());
    }

    /** Voltage lost between the terminals of the battery and the far side of a part. */
    public double drop(Node node) {
        return point.volts(0) - point.volts(node.order());
    }

    /** Voltage at the trigger of a switching device; 0 if it has none. */
    public double triggerVolts(Node node) {
        int end = network.triggerEnd(node);
        return end < 0 ? 0 : point.volts(end);
    }

    /** Current of the trigger of a switching device; 0 if it has none. */
    public double triggerAmperes(Node node) {
        int end = network.triggerEnd(node);
        return end < 0 ? 0 : point.amperes(end);
    }
}
