package loomwright.circuit.solve;

/**
 * What came of solving a network: voltage and current at every node, or the node at which it cannot work.
 *
 * <p>Where there is no operating point, the voltages are those of the last step and mean nothing.
 */
public final class OperatingPoint {
    private final RadialNetwork network;
    private final double sourceVolts;
    private final double[] volts;
    private final double[] amperes;
    private final int starvedNode;
    private final int steps;

    OperatingPoint(RadialNetwork network, double sourceVolts, double[] volts, double[] amperes, int starvedNode, int steps) {
        this.network = network;
        this.sourceVolts = sourceVolts;
        this.volts = volts;
        this.amperes = amperes;
        this.starvedNode = starvedNode;
        this.steps = steps;
    }

    public RadialNetwork network() {
        return network;
    }

    /** Whether there is an operating point. */
    public boolean exists() {
        return starvedNode < 0;
    }

    /** The node where the loads ask for more than can arrive; −1 if there is an operating point. */
    public int starvedNode() {
        return starvedNode;
    }

    /** How many sweeps were needed. */
    public int steps() {
        return steps;
    }

    /** Voltage of the source behind its inside resistance. */
    public double sourceVolts() {
        return sourceVolts;
    }

    /** Voltage at a node. */
    public double volts(int node) {
        return volts[node];
    }

    /** Current that arrives at a node, for its own loads and all behind it. */
    public double amperes(int node) {
        return amperes[node];
    }

    /** Power turned into heat on the way to a node from the one that feeds it; of the source, inside it. */
    public double lostWatts(int node) {
        return amperes[node] * amperes[node] * network.ohms(node);
    }

    /** Power that the loads of one node take. */
    public double loadWatts(int node) {
        return network.watts(node) + volts[node] * (network.amperes(node) + volts[node] * network.siemens(node));
    }

    /** Power the source gives, its own losses included. */
    public double sourceWatts() {
        return sourceVolts * amperes[0];
    }

    /** All losses added up. */
    public double lostWatts() {
        double sum = 0;
        for (int node = 0; node < network.size(); node++) {
            sum += lostWatts(node);
        }
        return sum;
    }

    /** What all loads take together. */
    public double loadWatts() {
        double sum = 0;
        for (int node = 0; node < network.size(); node++) {
            sum += loadWatts(node);
        }
        return sum;
    }
}
