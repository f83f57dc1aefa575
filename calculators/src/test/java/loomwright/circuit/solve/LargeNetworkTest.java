package loomwright.circuit.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** 100,000 nodes: a chain as deep as it goes, a tree by chance, and a star. Nothing here may call itself again and again. */
class LargeNetworkTest {
    private static final int NODES = 100_000;
    private static final long MOST_MILLISECONDS = 200;

    @Test
    void solvesADeepChainInTime() {
        RadialNetwork chain = new RadialNetwork(0.005);
        for (int node = 1; node < NODES; node++) {
            chain.addPower(chain.node(node - 1, 1e-6), 4e-4);
        }
        solvesInTime("deep chain", chain);
    }

    @Test
    void solvesATreeInTime() {
        Random random = new Random(7);
        RadialNetwork tree = new RadialNetwork(0.0005);
        for (int node = 1; node < NODES; node++) {
            tree.addPower(tree.node(random.nextInt(node), 1e-5), 2e-3 * random.nextDouble());
        }
        solvesInTime("tree", tree);
    }

    @Test
    void solvesAStarInTime() {
        RadialNetwork star = new RadialNetwork(0.0005);
        for (int node = 1; node < NODES; node++) {
            star.addPower(star.node(0, 0.01), 2e-3);
        }
        solvesInTime("star", star);
    }

    /** The best of a few runs, so that a busy machine does not decide. */
    private static void solvesInTime(String name, RadialNetwork network) {
        long best = Long.MAX_VALUE;
        OperatingPoint point = null;
        for (int run = 0; run < 8; run++) {
            long start = System.nanoTime();
            point = Sweep.solve(network, 12.8);
            best = Math.min(best, System.nanoTime() - start);
        }
        System.out.println(name + ": " + best / 1000 + " µs, " + point.steps() + " sweeps");
        assertTrue(point.exists());
        assertEquals(point.sourceWatts(), point.loadWatts() + point.lostWatts(), 1e-9 * point.sourceWatts());
        assertTrue(best / 1_000_000 < MOST_MILLISECONDS, name + " took " + best / 1_000_000 + " ms");
    }
}
