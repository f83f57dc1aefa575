package loomwright.circuit.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class SweepLawsTest {
    private static final double ROUNDED = 1e-9;

    @Property(tries = 300)
    void givesAsMuchEnergyAsLoadsAndLossesTake(@ForAll long seed) {
        OperatingPoint point = solved(RandomNetwork.of(seed, 8));
        assertEquals(point.sourceWatts(), point.loadWatts() + point.lostWatts(), ROUNDED * point.sourceWatts());
    }

    /** Kirchhoff's current law at every node, and Ohm's law on the way to it. */
    @Property(tries = 200)
    void keepsTheLawsOfOhmAndKirchhoffAtEveryNode(@ForAll long seed) {
        OperatingPoint point = solved(RandomNetwork.of(seed, 8));
        RadialNetwork network = point.network();
        double[] onward = new double[network.size()];
        for (int node = network.size() - 1; node > 0; node--) {
            onward[network.feeding(node)] += point.amperes(node);
        }
        for (int node = 0; node < network.size(); node++) {
            double before = node == 0 ? point.sourceVolts() : point.volts(network.feeding(node));
            double own = point.loadWatts(node) / point.volts(node);
            assertEquals(point.amperes(node), onward[node] + own, ROUNDED * (1 + point.amperes(node)));
            assertEquals(before - point.volts(node), point.amperes(node) * network.ohms(node), ROUNDED * before);
        }
    }

    @Property(tries = 150)
    void fallsEverywhereWhenTheLoadsGrow(@ForAll long seed, @ForAll @DoubleRange(min = 1.01, max = 1.5) double more) {
        RadialNetwork network = RandomNetwork.of(seed, 8);
        OperatingPoint light = solved(network);
        OperatingPoint heavy = Sweep.solve(RandomNetwork.loaded(network, more), 12.8);
        Assume.that(heavy.exists());
        for (int node = 0; node < network.size(); node++) {
            assertTrue(heavy.volts(node) <= light.volts(node) + 1e-12);
        }
    }

    /**
     * There is one edge of collapse: below it every share of the loads works, above it none. Just below it the network hangs on a thread:
     * a hair more load takes much more voltage than the same hair of half the load.
     */
    @Property(tries = 60)
    void hasOneEdgeOfCollapse(@ForAll long seed, @ForAll @DoubleRange(min = 0.05, max = 0.95) double share) {
        RadialNetwork network = RandomNetwork.of(seed, 8);
        double low = 0;
        double high = 1e6;
        for (int halving = 0; halving < 80; halving++) {
            double middle = (low + high) / 2;
            boolean works = Sweep.solve(RandomNetwork.loaded(network, middle), 12.8).exists();
            low = works ? middle : low;
            high = works ? high : middle;
        }
        Assume.that(low > 0 && high < 1e6);
        assertTrue(Sweep.solve(RandomNetwork.loaded(network, low * share), 12.8).exists());
        assertFalse(Sweep.solve(RandomNetwork.loaded(network, high / share), 12.8).exists());
    }

    private static OperatingPoint solved(RadialNetwork network) {
        OperatingPoint point = Sweep.solve(network, 12.8);
        Assume.that(point.exists());
        return point;
    }
}
