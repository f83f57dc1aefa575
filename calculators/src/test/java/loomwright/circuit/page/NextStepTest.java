package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.file.StartingCircuits;
import org.junit.jupiter.api.Test;

class NextStepTest {
    @Test
    void leadsFromTheBatteryToTheLoadAndIsThenSilent() {
        Circuit circuit = StartingCircuits.empty();
        assertTrue(NextStep.words(circuit).startsWith("Begin here"));
        String end = "battery";
        while (NextStep.usualAfter(circuit.node(end)) != PartKind.LOAD) {
            PartKind kind = NextStep.usualAfter(circuit.node(end));
            circuit = CircuitEdits.added(circuit, kind, end);
            end = circuit.parts().get(circuit.parts().size() - 1).id();
            assertTrue(NextStep.words(circuit).contains("feeds nothing yet"), NextStep.words(circuit));
        }
        circuit = CircuitEdits.added(circuit, PartKind.LOAD, end);
        assertEquals("", NextStep.words(circuit));
        // battery, main fuse, its run, panel, the device of a way, its run, load
        assertEquals(
                List.of(PartKind.SUPPLY, PartKind.PROTECTION, PartKind.CONDUCTOR, PartKind.PANEL, PartKind.PROTECTION, PartKind.CONDUCTOR, PartKind.LOAD),
                circuit.parts().stream().map(Part::kind).toList());
    }

    @Test
    void takesASwitchThatGivesATriggerForAnEnd() {
        assertEquals("", NextStep.words(StartingCircuits.reedmereTrailer()));
        assertEquals("", NextStep.words(StartingCircuits.punt()));
    }
}
