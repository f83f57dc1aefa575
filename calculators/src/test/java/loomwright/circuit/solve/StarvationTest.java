package loomwright.circuit.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.PartKind;
import loomwright.circuit.WorkedCircuits;
import loomwright.circuit.file.StartingCircuits;
import org.junit.jupiter.api.Test;

class StarvationTest {
    @Test
    void namesTheLoadThatItsConductorStarves() {
        Circuit thin = changed(WorkedCircuits.trailer(), "bench-run", "size", "0.5 mm²");
        thin = changed(thin, "bench-run", "route-length", "6 m");
        Circuit examined = thin;
        Solved solved = CircuitSolution.of(examined).lowest().get(0);
        assertFalse(solved.exists());
        Starvation starvation = Starvation.of(examined, solved);
        assertEquals("accessory-outlet", starvation.part().id());
        // 37.1 × 1.078585 × 12 m = 480.186 mΩ, and 1.00093 + 3 + 2 + 4.91835 mΩ: 491.105 mΩ; 10.5² ÷ (4 × 0.491105) = 56.1 W
        assertEquals(56.12, starvation.most().value(), 0.01);
        assertTrue(starvation.words().contains("100\u00a0W"), starvation.words());
        assertTrue(starvation.words().contains("56.1\u00a0W"), starvation.words());
    }

    @Test
    void saysThatHeldCurrentNeedsMoreThanTheWholeVoltage() {
        Circuit long1 = changed(WorkedCircuits.punt(), "pump-run", "route-length", "200 m");
        Circuit examined = changed(long1, "pump-run", "size", "0.5 mm²");
        Solved solved = CircuitSolution.of(examined).lowest().get(0);
        Starvation starvation = Starvation.of(examined, solved);
        assertEquals("bilge-pump", starvation.part().id());
        assertTrue(starvation.words().contains("more than the whole voltage"), starvation.words());
    }

    @Test
    void namesTheTriggerThatItsThinWireStarves() {
        Circuit circuit = CircuitEdits.added(StartingCircuits.empty(), PartKind.SWITCH, "battery");
        circuit = changed(circuit, "switch-1", "switching", "solid-state");
        circuit = changed(circuit, "switch-1", "trigger-current", "500 mA");
        circuit = changed(circuit, "switch-1", "trigger-size", "0.35 mm²");
        circuit = changed(circuit, "switch-1", "trigger-route-length", "200 m");
        circuit = CircuitEdits.triggered(circuit, "switch-1", "battery");
        Circuit examined = circuit;
        Solved solved = CircuitSolution.of(examined).lowest().get(0);
        assertFalse(solved.exists());
        Starvation starvation = Starvation.of(examined, solved);
        assertEquals("switch-1", starvation.part().id());
        // ISO 6722-1 allows 54.4 mΩ/m for 0.35 mm²: 400 m of it are 21.76 Ω, and 10.5 V ÷ 21.76 Ω = 0.4825 A.
        assertEquals(0.4825, starvation.most().value(), 0.00005);
        assertTrue(starvation.words().startsWith("The trigger of "), starvation.words());
        assertTrue(starvation.words().contains("asks for 0.5\u00a0A"), starvation.words());
    }

    private static Circuit changed(Circuit circuit, String id, String field, String text) {
        return CircuitEdits.changed(circuit, id, field, text).circuit();
    }
}
