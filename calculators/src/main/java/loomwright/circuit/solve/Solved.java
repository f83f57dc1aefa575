package loomwright.circuit.solve;

import loomwright.circuit.Installation;

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
    public static Solved of(Installation installation, Situation situation) {
        return of(installation, situation, false);
    }

    /** Solves a circuit with every part at the least resistance it may have: cold copper of the full area, joints and contacts perfect. */
    public static Solved withLeastResistance(Installation installation, Situation situation) {
        return of(installation, situation, true);
    }

    private static Solved of(Installation installation, Situation situation, boolean least) {
        CircuitNetwork network = CircuitNetwork.of(installation, situation, least);
        return new Solved(situation, network, Sweep.solve(network.network(), situation.sourceVolts()));
    }

    public Situation situation() {
        return situation;
    }

    /** Whether there is an operating point. */
    public boolean exists() {
        return point.exists();
    }

    /** The whole operating point; node and part have the same number. */
    public OperatingPoint point() {
        return point;
    }

    /** Voltage behind a part, between its two conductors. */
    public double volts(int part) {
        return point.volts(part);
    }

    /** Current through a part. */
    public double amperes(int part) {
        return point.amperes(part);
    }

    /** Voltage lost between the terminals of the battery and the far side of a part. */
    public double drop(int part) {
        return point.volts(0) - point.volts(part);
    }

    /** Voltage at the trigger of a switching device; 0 if it has none. */
    public double triggerVolts(int part) {
        int node = network.triggerNode(part);
        return node < 0 ? 0 : point.volts(node);
    }

    /** Current of the trigger of a switching device; 0 if it has none. */
    public double triggerAmperes(int part) {
        int node = network.triggerNode(part);
        return node < 0 ? 0 : point.amperes(node);
    }
}
