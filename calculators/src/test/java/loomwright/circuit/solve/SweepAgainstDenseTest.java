package loomwright.circuit.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Our sweep against the full nodal equations solved by a reference library (Hipparchus, LU decomposition), 1,000 networks by chance. */
class SweepAgainstDenseTest {
    /** Of the voltage; both solvers work in double precision, and these networks are not at the edge of collapse. */
    private static final double AGREEMENT = 1e-9;

    private static final int NETWORKS = 1000;

    @Test
    void agreesWithADenseSolveOnAThousandNetworks() {
        int compared = 0;
        int deep = 0;
        double farthest = 0;
        for (long seed = 0; compared < NETWORKS; seed++) {
            RadialNetwork network = RandomNetwork.of(seed, 40);
            OperatingPoint point = Sweep.solve(network, 12.8);
            // Loads a hundredth larger must still have an operating point: at the edge itself no solver keeps nine digits.
            if (!point.exists() || !Sweep.solve(RandomNetwork.loaded(network, 1.01), 12.8).exists()) {
                continue;
            }
            double[] dense = DenseNewton.volts(network, 12.8);
            for (int node = network.ohms(0) == 0 ? 1 : 0; node < network.size(); node++) {
                double away = Math.abs(point.volts(node) - dense[node]) / dense[node];
                farthest = Math.max(farthest, away);
                assertEquals(dense[node], point.volts(node), AGREEMENT * dense[node], "network " + seed + ", node " + node);
            }
            deep += hasNodeBelow(point, 0.8 * 12.8) ? 1 : 0;
            compared++;
        }
        System.out.println("Sweep against dense solve: farthest " + farthest + " of the voltage");
        assertTrue(farthest <= AGREEMENT);
        assertTrue(deep > 50, "too few of the networks are loaded heavily: " + deep);
    }

    private static boolean hasNodeBelow(OperatingPoint point, double volts) {
        for (int node = 0; node < point.network().size(); node++) {
            if (point.volts(node) < volts) {
                return true;
            }
        }
        return false;
    }
}
