package loomwright.circuit.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class SweepTest {
    @Test
    void solvesOneRunByTheRootOfItsSquare() {
        // 90 W at 12 V through 100 mΩ: U² − 12 U + 90 × 0.1 = 0, U = 6 + √(36 − 9) = 6 + 5.196152423 = 11.196152423 V.
        OperatingPoint point = Sweep.solve(run(0.1, 90), 12);
        assertEquals(11.196152423, point.volts(1), 1e-9);
        // 90 W ÷ 11.196152423 V = 8.038476 A
        assertEquals(8.038476, point.amperes(1), 1e-6);
    }

    @Test
    void addsUpAllThreeKindsOfLoad() {
        // At the end of 0.2 Ω on 12 V: 3 A held and 6 Ω. U = 12 − 0.2 (3 + U/6), U × (1 + 1/30) = 11.4, U = 11.032258 V.
        RadialNetwork network = new RadialNetwork(0);
        int end = network.node(0, 0.2);
        network.addCurrent(end, 3);
        network.addConductance(end, 1.0 / 6);
        assertEquals(11.032258, Sweep.solve(network, 12).volts(end), 1e-6);
    }

    @Test
    void staysCalmWhereTheLoadHasLessResistanceThanItsConductor() {
        // 1 Ω behind 2 Ω on 12 V is 4 V. A plain sweep would swing ever wider here.
        RadialNetwork network = new RadialNetwork(0);
        network.addConductance(network.node(0, 2), 1);
        assertEquals(4, Sweep.solve(network, 12).volts(1), 1e-12);
    }

    @Test
    void findsCollapseOnBothSidesOfItsEdge() {
        // The most that arrives through R is U²/(4 R) = 144/(4 × 0.1) = 360 W.
        assertTrue(Sweep.solve(run(0.1, 360 * (1 - 1e-9)), 12).exists());
        OperatingPoint beyond = Sweep.solve(run(0.1, 360 * (1 + 1e-9)), 12);
        assertFalse(beyond.exists());
        assertEquals(1, beyond.starvedNode());
        assertEquals(6, Sweep.solve(run(0.1, 360 * (1 - 1e-12)), 12).volts(1), 1e-4);
    }

    @Test
    void endsAtTheVeryEdgeToo() {
        assertTimeoutPreemptively(Duration.ofSeconds(2), () -> {
            for (int ulps = -500; ulps <= 500; ulps++) {
                assertTrue(Sweep.solve(run(0.1, 360 + ulps * Math.ulp(360.0)), 12).steps() <= 60);
            }
        });
    }

    @Test
    void findsALoadOfHeldCurrentThatAsksForMoreThanOhmsLawGives() {
        // 13 A × 1 Ω is more than 12 V.
        RadialNetwork network = new RadialNetwork(0);
        network.addCurrent(network.node(0, 1), 13);
        assertEquals(1, Sweep.solve(network, 12).starvedNode());
    }

    @Test
    void namesTheSourceIfItsOwnResistanceStarvesTheLoad() {
        RadialNetwork network = new RadialNetwork(0.1);
        network.addPower(network.node(0, 0), 361);
        assertEquals(0, Sweep.solve(network, 12).starvedNode());
    }

    @Test
    void leavesANetworkWithoutLoadsAtTheVoltageOfTheSource() {
        RadialNetwork network = new RadialNetwork(0.01);
        network.node(network.node(0, 1), 0);
        OperatingPoint point = Sweep.solve(network, 12.8);
        assertEquals(12.8, point.volts(2));
        assertEquals(0, point.sourceWatts());
    }

    @Test
    void refusesFiguresThatNoNetworkCanHave() {
        RadialNetwork network = new RadialNetwork(0);
        assertThrows(IllegalArgumentException.class, () -> network.node(1, 1));
        assertThrows(IllegalArgumentException.class, () -> network.node(0, -1));
        assertThrows(IllegalArgumentException.class, () -> network.node(0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> network.addPower(0, -1));
        assertThrows(IllegalArgumentException.class, () -> network.addCurrent(0, Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> network.addConductance(1, 1));
        assertThrows(IllegalArgumentException.class, () -> Sweep.solve(network, 0));
        assertThrows(IllegalArgumentException.class, () -> new RadialNetwork(-1));
        assertThrows(IllegalArgumentException.class, () -> new RadialNetwork(Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> network.node(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> network.node(0, Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> network.addPower(-1, 1));
    }

    @Test
    void keepsEveryFigureOfANetworkThatHasGrown() {
        RadialNetwork chain = new RadialNetwork(0.003);
        chain.addCurrent(0, 0.5);
        for (int node = 1; node <= 200; node++) {
            assertEquals(node, chain.node(node - 1, 0.001 * node));
            chain.addPower(node, node);
            chain.addCurrent(node, 2 * node);
            chain.addConductance(node, 3 * node);
        }
        assertEquals(201, chain.size());
        assertEquals(-1, chain.feeding(0));
        assertEquals(0.003, chain.ohms(0));
        assertEquals(0.5, chain.amperes(0));
        for (int node = 1; node <= 200; node++) {
            assertEquals(node - 1, chain.feeding(node));
            assertEquals(0.001 * node, chain.ohms(node));
            assertEquals(node, chain.watts(node));
            assertEquals(2 * node, chain.amperes(node));
            assertEquals(3 * node, chain.siemens(node));
        }
    }

    private static RadialNetwork run(double ohms, double watts) {
        RadialNetwork network = new RadialNetwork(0);
        network.addPower(network.node(0, ohms), watts);
        return network;
    }
}
