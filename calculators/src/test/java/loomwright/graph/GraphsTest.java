package loomwright.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loomwright.catalogue.Catalogue;
import loomwright.entries.TypedEntries;
import loomwright.picture.Picture;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import loomwright.worked.Working;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class GraphsTest {
    private static final int ENTRIES = Integer.getInteger("graph.entries", 250);

    private static final Map<String, String> BENCH = Map.of(
            "current", "10 A", "route-length", "4.2 m", "length-counts", "one-way", "conductor", "iso-6722-1", "size", "2.5 mm²", "temperature", "20 °C");

    /** ISO 6722-1: 2.5 mm² 7.60, 1.5 mm² 12.7, 4 mm² 4.71, 6 mm² 3.14 mΩ/m. 10 A × 2 × 4.2 m × each, to three digits. */
    @Test
    void dropGraphHoldsTheHandWorkedDropsOfTheSizeAndItsNeighbours() {
        Picture picture = draw("voltage-drop", BENCH);
        assertEquals(List.of("4.2", "1.07", "0.396", "0.264", "0.638"), row(picture, "4.2"));
        assertTrue(picture.figures().heads().get(4).endsWith("2.5\u00a0mm²"), picture.figures().heads().toString());
    }

    /** 3 % and 10 % of 12 V, in the words beside the level lines. */
    @Test
    void dropGraphMarksTheAllowances() {
        Map<String, String> longer = new HashMap<>(BENCH);
        longer.put("route-length", "8 m");
        String body = draw("voltage-drop", longer).body();
        assertTrue(body.contains("3\u00a0% of the supply") && body.contains("10\u00a0% of the supply"), body);
    }

    /** Maker's sheet of the miniature blade: 110 % for 100 h at least, 200 % from 0.15 s to 5 s. */
    @Test
    void openingWindowStepsAtThePrintedGates() {
        Picture picture = draw("time-current", Map.of("fuse-type", "miniature-blade", "rating", "10 A", "current", "20 A"));
        assertEquals(List.of("20", "0.15", "5"), row(picture, "20"));
        assertTrue(picture.body().contains("not before") && picture.body().contains("open by"), picture.body());
    }

    /** 100 Ah × 80 % ÷ 5 A = 16 h. */
    @Test
    void runTimeGraphGoesThroughTheAnswer() {
        Picture picture = draw("run-time", Map.of("chemistry", "lifepo4", "capacity", "100 Ah", "load-current", "5 A", "usable-depth", "80 %"));
        assertEquals(List.of("5", "16"), row(picture, "5"));
    }

    /** 12 W × 4 h = 48 Wh; 10 mA × 12 V × 24 h = 2.88 Wh. */
    @Test
    void dayBarsNameEachLoadAndTheStandingDraw() {
        Picture picture =
                draw("day-energy", Map.of("load-1-power", "12 W", "load-1-hours", "4 h", "standing-current", "10 mA", "system-voltage", "12 V"));
        assertEquals(2, picture.figures().rows().size());
        assertTrue(picture.figures().rows().toString().contains("48\u00a0Wh"), picture.figures().rows().toString());
        assertTrue(picture.figures().rows().toString().contains("2.88\u00a0Wh"), picture.figures().rows().toString());
    }

    /** 40 °C + 10 A × 1.2 V × (1.3 + 0.1 + 1.0) K/W = 68.8 °C. */
    @Test
    void junctionGraphGoesThroughTheAnswer() {
        Picture picture = draw(
                "junction-temperature",
                Map.of("current", "10 A", "voltage-drop", "1.2 V", "junction-to-case", "1.3", "case-to-sink", "0.1", "sink-to-air", "1.0"));
        assertEquals(List.of("10", "68.8"), row(picture, "10"));
    }

    @Test
    void isAbsentWhereThereIsNothingToDraw() {
        assertNull(drawn(Catalogue.find("ohm-and-power"), Map.of("voltage", "12 V", "current", "5 A")));
        assertNull(drawn(Catalogue.find("day-energy"), Map.of("load-1-power", "0 W", "load-1-hours", "0 h")));
    }

    /** Whatever a calculator can answer, its graph can show or leave out, with every number finite. */
    @TestFactory
    Stream<DynamicTest> drawsWhateverTheCalculatorAnswers() {
        assertEquals(
                Set.of("day-energy", "junction-temperature", "run-time", "time-current", "voltage-drop"),
                Graphs.all().stream().map(CalculatorGraph::calculator).collect(Collectors.toSet()));
        return Graphs.all().stream().map(CalculatorGraph::calculator).map(key -> DynamicTest.dynamicTest(key, () -> {
            Calculator calculator = Catalogue.find(key);
            TypedEntries typed = new TypedEntries(calculator, List.of(), 5);
            int drawn = 0;
            for (int i = 0; i < ENTRIES; i++) {
                drawn += isDrawn(calculator, typed.next()) ? 1 : 0;
            }
            assertTrue(drawn > ENTRIES / 10, "only " + drawn + " graphs");
        }));
    }

    private static boolean isDrawn(Calculator calculator, Map<String, String> entries) {
        Picture picture;
        try {
            picture = drawn(calculator, entries);
        } catch (RuntimeException e) {
            throw new AssertionError(entries.toString(), e);
        }
        if (picture == null) {
            return false;
        }
        String all = picture.svg("key") + picture.figures();
        assertFalse(all.contains("NaN") || all.contains("Infinity"), () -> entries + all);
        return true;
    }

    private static Picture draw(String calculator, Map<String, String> entries) {
        Picture picture = drawn(Catalogue.find(calculator), entries);
        assertNotNull(picture);
        return picture;
    }

    /** The graph, or null if there is none or the entries cannot be used. */
    private static Picture drawn(Calculator calculator, Map<String, String> entries) {
        Working working = Outcome.of(calculator, entries).working();
        return working == null ? null : Graphs.draw(calculator, entries, working);
    }

    private static List<String> row(Picture picture, String first) {
        return picture.figures().rows().stream().filter(row -> row.get(0).equals(first)).findFirst().orElseThrow();
    }
}
