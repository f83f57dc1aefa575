package loomwright.circuit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.WorkedCircuits;
import org.junit.jupiter.api.Test;

class SmallestThatPassesTest {
    private final Circuit trailer = WorkedCircuits.trailer();

    @Test
    void findsTheSmallestSizeOfARunAndSaysWhatItChanged() {
        // 1.2 V at 18 A and more leave 1.2/18.4 = 65 mΩ; 3 mm² has 6.15 × 1.0786 × 8.4 = 55.7 mΩ and 12 mΩ around it, 4 mm² has 42.7 mΩ
        Suggestion suggestion = SmallestThatPasses.of(trailer, "bench-run");
        assertEquals("4 mm²", suggestion.circuit().part("bench-run").text("size"));
        assertTrue(suggestion.words().startsWith("Run to the bench: 6 mm² was changed to 4 mm²"), suggestion.words());
        assertTrue(suggestion.words().contains("The next smaller does not: 3 mm²: "), suggestion.words());
        assertEquals(CircuitEdits.changed(trailer, "bench-run", "size", "4 mm²").circuit(), suggestion.circuit());
    }

    @Test
    void takesNoSizeThatNoTableLists() {
        // 0.75 mm² has less copper than 18 AWG, where Table 5 begins, but the cord of 0.75 mm² carries 6 A; 0.5 mm² carries 3 A, below the 5 A device
        assertEquals("0.75 mm²", SmallestThatPasses.of(trailer, "strip-run").circuit().part("strip-run").text("size"));
    }

    @Test
    void findsTheSmallestRatingOfADevice() {
        // 7.31 A ÷ 80 % = 9.14 A: 10 A
        Suggestion suggestion = SmallestThatPasses.of(CircuitEdits.changed(trailer, "usb-fuse", "rating", "25 A").circuit(), "usb-fuse");
        assertEquals("10 A", suggestion.circuit().part("usb-fuse").text("rating"));
        assertEquals(6, suggestion.left().size());
    }

    @Test
    void saysWhyThereIsNone() {
        Circuit far = CircuitEdits.changed(trailer, "bench-run", "route-length", "200 m").circuit();
        assertNull(SmallestThatPasses.of(far, "bench-run").circuit());
        assertTrue(SmallestThatPasses.of(far, "bench-run").words().contains("None of the 18 standard sizes"));
        assertTrue(SmallestThatPasses.of(trailer, "breaker").words().contains("No series of standard ratings"));
        assertTrue(SmallestThatPasses.of(trailer, "strip").words().contains("Only a conductor run"));
        Circuit broken = CircuitEdits.changed(trailer, "strip-run", "size", "2.7 mm²").circuit();
        assertTrue(SmallestThatPasses.of(broken, "bench-run").words().contains("First correct"));
    }
}
