package loomwright.circuit.solve;

/**
 * Finds the operating point of a radial network by sweeps from the loads to the source and back, O(n) each.
 *
 * <p>On the way back every node is replaced by a current and a conductance seen from the node that feeds it; a load that holds its power by
 * the tangent of P/U at the last voltage. On the way out the voltages follow. With loads of fixed current and resistance only, one sweep is
 * exact. With constant power each sweep is one step of Newton's method on the nodal equations G·U + P/U = J.
 *
 * <p>Why it always ends, and ends right. G is an M-matrix and P/U is convex, so from the voltages without constant power, which lie above
 * every solution, the steps fall monotonically to the highest solution, as long as there is one (the monotone Newton theorem: Ortega and
 * Rheinboldt, Iterative Solution of Nonlinear Equations in Several Variables, 1970, chapter 13; cited from memory). There the pivots of the
 * elimination, 1 + g·R, stay above zero, for the voltages stay above the solution, where the matrix is positive definite. So a pivot of
 * zero or less, or a voltage of zero or less, proves that no operating point exists: the voltage collapses.
 */
public final class Sweep {
    /** Far more than the 5 or 6 of a sound network and the 25 or so at the very edge of collapse. */
    private static final int MOST_STEPS = 100;

    private static final double SETTLED = 1e-14;

    /** Below this a step that is no longer smaller than half the last one is rounding. */
    private static final double NEARLY_SETTLED = 1e-9;

    private final RadialNetwork network;
    private final double sourceVolts;
    private final int count;
    private final double[] volts;
    private final double[] current;
    private final double[] seenAmperes;
    private final double[] seenSiemens;
    private double largestFall;

    private Sweep(RadialNetwork network, double sourceVolts) {
        this.network = network;
        this.sourceVolts = sourceVolts;
        this.count = network.size();
        this.volts = new double[count];
        this.current = new double[count];
        this.seenAmperes = new double[count];
        this.seenSiemens = new double[count];
    }

    /**
     * Solves a network.
     *
     * @param sourceVolts voltage of the source behind its inside resistance, V; above 0
     */
    public static OperatingPoint solve(RadialNetwork network, double sourceVolts) {
        if (!(sourceVolts > 0 && sourceVolts < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the voltage of the source must be above 0");
        }
        return new Sweep(network, sourceVolts).run();
    }

    private OperatingPoint run() {
        int starved = step(true);
        int steps = 1;
        double fallBefore = Double.POSITIVE_INFINITY;
        while (starved < 0 && steps < MOST_STEPS) {
            starved = step(false);
            steps++;
            boolean rounding = largestFall <= NEARLY_SETTLED && largestFall >= fallBefore / 2;
            if (starved < 0 && (largestFall <= SETTLED || rounding)) {
                return found(-1, steps);
            }
            fallBefore = largestFall;
        }
        // Running out of steps was never seen: they halve the way even to a double root. If it should happen, nothing may be claimed.
        return found(Math.max(0, starved), steps);
    }

    private OperatingPoint found(int starved, int steps) {
        return new OperatingPoint(network, sourceVolts, volts, current, starved, steps);
    }

    /** One sweep back and out. Gives the node where the loads ask for too much, or −1. */
    private int step(boolean first) {
        int starved = back(first);
        return starved >= 0 ? starved : out(first);
    }

    private int back(boolean first) {
        for (int node = 0; node < count; node++) {
            double power = first ? 0 : network.watts(node) / volts[node];
            seenAmperes[node] = network.amperes(node) + 2 * power;
            seenSiemens[node] = network.siemens(node) - (power == 0 ? 0 : power / volts[node]);
        }
        for (int node = count - 1; node > 0; node--) {
            double pivot = 1 + seenSiemens[node] * network.ohms(node);
            if (!(pivot > 0)) {
                return node;
            }
            int feeding = network.feeding(node);
            seenAmperes[feeding] += seenAmperes[node] / pivot;
            seenSiemens[feeding] += seenSiemens[node] / pivot;
        }
        return 1 + seenSiemens[0] * network.ohms(0) > 0 ? -1 : 0;
    }

    private int out(boolean first) {
        largestFall = 0;
        for (int node = 0; node < count; node++) {
            double before = node == 0 ? sourceVolts : volts[network.feeding(node)];
            double ohms = network.ohms(node);
            double flowing = (seenAmperes[node] + seenSiemens[node] * before) / (1 + seenSiemens[node] * ohms);
            double here = before - ohms * flowing;
            if (!(here > 0)) {
                return node;
            }
            if (!first) {
                largestFall = Math.max(largestFall, (volts[node] - here) / here);
            }
            volts[node] = here;
            current[node] = flowing;
        }
        return -1;
    }
}
