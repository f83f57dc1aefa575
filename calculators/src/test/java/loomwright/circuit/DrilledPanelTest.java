package loomwright.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.file.CircuitFile;
import loomwright.circuit.file.CircuitLink;
import loomwright.circuit.file.FileRead;
import loomwright.circuit.file.StartingCircuits;
import loomwright.quantity.Units;
import org.junit.jupiter.api.Test;

class DrilledPanelTest {
    private static final DrilledPanel BENCH = DrilledPanel.of(
            "panel-width=150 mm", "panel-height=90", "count=3", "first-centre=30 mm", "row-height=4,5 cm", "clear-depth=75 mm");

    @Test
    void isWorkedOutAsTyped() {
        // 30 mm + 2 × 50 mm, the usual distance
        assertEquals(130, BENCH.outcome().working().result("last-centre").quantity().in(Units.MILLIMETRE).value(), 1e-9);
        assertEquals("90 mm", BENCH.text("panel-height"), "a number without a unit is in the first unit");
        assertEquals("50 mm", BENCH.text("centre-distance"), "what is usual");
        assertEquals("4,5 cm", BENCH.text("row-height"));
    }

    @Test
    void saysWhatIsMissingAndKeepsWhatWasTyped() {
        DrilledPanel panel = BENCH.with("panel-width", "wide");
        assertNull(panel.outcome().working());
        assertTrue(panel.outcome().faults().get(0).message().contains("Width of the panel"), panel.outcome().faults().toString());
        assertEquals("wide", panel.text("panel-width"));
        assertFalse(DrilledPanel.NONE.outcome().faults().isEmpty());
    }

    @Test
    void isNoneAgainWhenAllIsTakenOut() {
        assertEquals(DrilledPanel.NONE, DrilledPanel.NONE.with("panel-width", "1 mm").with("panel-width", " "));
        assertEquals(DrilledPanel.NONE, DrilledPanel.NONE.with("hole-diameter", "29 mm"), "what is usual is not kept");
        assertTrue(DrilledPanel.NONE.isEmpty());
    }

    @Test
    void refusesTextsThatCannotBeKept() {
        assertThrows(CircuitRefusal.class, () -> BENCH.with("panel-width", "9".repeat(61)));
        assertThrows(CircuitRefusal.class, () -> BENCH.with("panel-width", "1\u202emm"));
        assertThrows(CircuitRefusal.class, () -> BENCH.with("count", "seven"));
    }

    @Test
    void goesWithTheCircuitThroughEveryChangeFileAndLink() {
        Circuit circuit = CircuitEdits.branched(StartingCircuits.punt().in(BENCH), "fuse-panel");
        circuit = CircuitEdits.renamed(CircuitEdits.without(circuit, "lead"), "Other");
        assertEquals(BENCH, circuit.panel());
        assertEquals(circuit, CircuitFile.read(CircuitFile.write(circuit)).circuit());
        assertEquals(circuit, CircuitLink.read(CircuitLink.write(circuit)).circuit());
    }

    @Test
    void aHostilePanelInAFileIsRefusedWithItsPlace() {
        for (List<String> each : List.of(
                List.of("drilled-panel: A drilled panel is an object in braces", "[1]"),
                List.of("drilled-panel: There is no field \u201cdepth\u201d", "{\"depth\": \"1 mm\"}"),
                List.of("drilled-panel.count: Number of cut-outs is none of its choices", "{\"count\": \"99\"}"),
                List.of("drilled-panel.panel-width: Width of the panel is longer than 60", "{\"panel-width\": \"" + "9".repeat(99) + "\"}"),
                List.of("drilled-panel.panel-width: A text in double quotes belongs here", "{\"panel-width\": 1e99}"))) {
            FileRead read = CircuitFile.read("{\"format\":\"loomwright-circuit\",\"version\":1,\"parts\":[{\"id\":\"b\",\"kind\":\"supply\"}],"
                    + "\"drilled-panel\":" + each.get(1) + "}");
            assertNull(read.circuit(), each.toString());
            assertTrue(read.faults().get(0).text().contains(each.get(0)), read.faults().toString());
        }
    }
}
