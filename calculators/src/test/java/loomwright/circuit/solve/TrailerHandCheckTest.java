package loomwright.circuit.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import loomwright.circuit.Circuit;
import loomwright.circuit.WorkedCircuits;
import loomwright.circuit.Node;
import org.junit.jupiter.api.Test;

/**
 * The Reedmere trailer worked by hand, battery nearly empty (10.5 V), all loads on.
 *
 * <p>Printed resistances (ISO 6722-1, at 20 °C): 16 mm² 1.16, 6 mm² 3.14, 2.5 mm² 7.60, 1.5 mm² 12.7 mΩ/m. At 40 °C times
 * (234.5 + 40)/(234.5 + 20) = 274.5/254.5 = 1.078585 (rule of FAA AC 43.13-1B). Out and back:
 *
 * <pre>
 * main lead        1.16 × 1.078585 × 2 × 0.4 m =  1.00093 mΩ
 * panel feed       3.14 × 1.078585 × 2 × 2.0 m = 13.54703 mΩ
 * run to bench     3.14 × 1.078585 × 2 × 4.2 m = 28.44877 mΩ
 * tail to outlet   7.60 × 1.078585 × 2 × 0.3 m =  4.91835 mΩ
 * LED strip        12.7 × 1.078585 × 2 × 3.0 m = 82.18821 mΩ
 * fan              12.7 × 1.078585 × 2 × 2.5 m = 68.49018 mΩ
 * camera           12.7 × 1.078585 × 2 × 2.0 m = 54.79214 mΩ
 * water pump       7.60 × 1.078585 × 2 × 3.5 m = 57.38075 mΩ
 * </pre>
 *
 * Switch 3 mΩ, four joints of 0.5 mΩ: 2 mΩ. Loads: strip 12 W, fan 6 W, camera 10 W, outlet pair 72 W, laptop 100 W; pump 4 A held; trigger
 * 15 mA. Beginning with 10.5 V at every load, currents and voltages in turn until they settle:
 *
 * <pre>
 * 1: feed  12/10.5 + 6/10.5 + 10/10.5 + 4 + 0.015 = 6.681667 A;  bench 72/10.5 + 100/10.5 = 16.380952 A
 *    busbar 10.5 − 0.00100093 × 23.062619 = 10.476916 V;  panel 10.476916 − 0.01354703 × 6.681667 = 10.386399 V
 *    bench 10.476916 − 0.03344877 × 16.380952 = 9.928993 V;  laptop 9.928993 − 0.00491835 × 9.523810 = 9.882152 V
 * 2: laptop 100/9.882152 = 10.119254 A, pair 72/9.895267 = 7.276206 A ... laptop 9.844227 V
 * 3: laptop 9.841749 V    4: 9.841587 V    ...    settled: 9.841575 V, 10.160975 A
 * </pre>
 */
class TrailerHandCheckTest {
    /** The hand working carries seven digits. */
    private static final double HAND = 5e-6;

    private final Circuit trailer = WorkedCircuits.trailer();
    private final Solved solved = CircuitSolution.of(trailer).lowest().get(0);

    @Test
    void hasTheResistancesOfItsTables() {
        assertEquals(0.02844877, at("bench-run").figures().ohms(), 1e-8);
        assertEquals(0.01354703, at("feed").figures().ohms(), 1e-8);
        assertEquals(0.08218821, at("strip-run").figures().ohms(), 1e-8);
        assertEquals(0.002, at("bench-joints").figures().ohms(), 1e-12);
    }

    @Test
    void settlesAtTheVoltagesWorkedByHand() {
        assertEquals(10.475782, volts("main-lead"), HAND);
        assertEquals(10.384621, volts("fuse-panel"), HAND);
        assertEquals(9.891551, volts("bench-joints"), HAND);
        assertEquals(9.841575, volts("accessory-outlet"), HAND);
        assertEquals(9.855620, volts("outlet-pair"), HAND);
        assertEquals(10.288763, volts("strip"), HAND);
        // 10.384621 V − 4 A × 57.38075 mΩ = 10.155098 V
        assertEquals(10.155098, volts("pump"), HAND);
    }

    @Test
    void carriesTheCurrentsWorkedByHand() {
        // 72/9.855620 + 100/9.841575 = 7.305477 + 10.160975 = 17.466452 A through the breaker
        assertEquals(17.466452, solved.amperes(at("breaker")), HAND);
        // 1.166321 + 0.579996 + 0.967905 + 4 + 0.015 = 6.729223 A through the panel
        assertEquals(6.729223, solved.amperes(at("fuse-panel")), HAND);
        assertEquals(24.195674, solved.amperes(trailer.supply()), 2 * HAND);
        assertEquals(0.015, solved.triggerAmperes(at("outlet-switch")), 1e-12);
    }

    @Test
    void turnsIntoHeatWhatTheHandWorkingLoses() {
        // 17.466452² × 28.44877 mΩ = 305.076945 × 0.02844877 = 8.679 W in the run to the bench; 0.9152 W in the switch
        assertEquals(8.679, solved.point().lostWatts(at("bench-run").order()), 5e-4);
        assertEquals(0.9152, solved.point().lostWatts(at("outlet-switch").order()), 5e-5);
        assertNull(Starvation.of(trailer, solved));
    }

    @Test
    void dipsAtTheStartOfThePump() {
        Solved start = CircuitSolution.of(trailer).starts().get(0);
        // 11 A more through battery lead and feed take at least 11 × 14.54796 mΩ = 0.160028 V from the panel, a little more because the
        // loads that hold their power draw more then.
        double dip = volts("fuse-panel") - start.volts(at("fuse-panel"));
        assertEquals(0.1605, dip, 5e-4);
        assertEquals(15, start.amperes(at("pump")), 1e-12);
    }

    private double volts(String id) {
        return solved.volts(at(id));
    }

    private Node at(String id) {
        return trailer.node(id);
    }
}
