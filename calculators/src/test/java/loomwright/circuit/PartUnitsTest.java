package loomwright.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import loomwright.circuit.file.CircuitFile;
import loomwright.circuit.file.StartingCircuits;
import loomwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** New parts in the units of a reader. */
class PartUnitsTest {
    private static final Circuit EMPTY = StartingCircuits.empty();

    private static Circuit grown(UnitSystem system) {
        return PartUnits.ofNew(system, EMPTY, CircuitEdits.branched(EMPTY, "battery"));
    }

    /** 1 m = 3.28 ft; 40 °C = 104 °F; 2.5 mm² has less copper than 12 AWG, 3.31 mm², and more than 14 AWG, 2.08 mm². */
    @Test
    void aNewRunIsOfAGaugeThatIsSoldWithTheKindThatListsItAndTheFileCanBeRead() {
        Circuit circuit = grown(UnitSystem.AMERICAN);
        Part run = circuit.part("conductor-1");
        assertEquals("12 AWG", run.text("size"));
        assertEquals("nec-stranded", run.text("conductor"));
        assertEquals("3.28 ft", run.text("route-length"));
        assertEquals("104 °F", run.text("temperature"));
        assertEquals(circuit, CircuitFile.read(CircuitFile.write(circuit)).circuit());
    }

    @Test
    void inMetricUnitsAndOfPartsThatWereThereNothingChanges() {
        assertEquals(CircuitEdits.branched(EMPTY, "battery"), grown(UnitSystem.METRIC));
        Circuit metric = grown(UnitSystem.METRIC);
        assertSame(metric.part("conductor-1"), PartUnits.ofNew(UnitSystem.AMERICAN, metric, CircuitEdits.branched(metric, "battery")).part("conductor-1"));
    }

    @Test
    void aSizeThatIsPutInBringsTheKindOfCableThatListsIt() {
        Circuit metric = grown(UnitSystem.METRIC);
        assertEquals("nec-stranded", PartUnits.withKindFor(metric, "conductor-1", "size", "12 AWG").part("conductor-1").text("conductor"));
        assertSame(metric, PartUnits.withKindFor(metric, "conductor-1", "size", "4 mm²"));
        assertSame(metric, PartUnits.withKindFor(metric, "conductor-1", "route-length", "12 ft"));
        assertSame(metric, PartUnits.withKindFor(metric, "load-1", "size", "12 AWG"));
    }
}
