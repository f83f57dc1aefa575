package loomwright.worked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import org.junit.jupiter.api.Test;

class FieldLimitsTest {
    private static final QuantityField SIZE =
            QuantityField.of("size", "Size", "", 0.5, 120, Units.SQUARE_MILLIMETRE, Units.AWG).orElse(0.1, 14, Units.MILLIMETRE);

    @Test
    void takesBothKindsOfQuantity() {
        assertEquals("2.5\u00a0mm²", read("2.5").quantity("size").text());
        assertEquals("14\u00a0AWG", read("14 AWG").quantity("size").text());
        assertEquals("2\u00a0mm", read("2 mm").quantity("size").text());
    }

    @Test
    void holdsEachKindToItsOwnLimits() {
        assertEquals("Size must be between 0.5\u00a0mm² and 120\u00a0mm², but is 121\u00a0mm²", fault("121 mm2"));
        assertEquals("Size must be between 0.1\u00a0mm and 14\u00a0mm, but is 15\u00a0mm", fault("15 mm"));
        assertEquals("Size must be between 0.1\u00a0mm and 14\u00a0mm (0.00394\u00a0in and 0.551\u00a0in), but is 1\u00a0in",
                fault("1 in"));
    }

    /** Four digits would say that it must be at most 120 mm², but is 120 mm². */
    @Test
    void whatLiesAHairBeyondALimitIsSaidAsItWasTyped() {
        assertEquals("Size must be between 0.5\u00a0mm² and 120\u00a0mm², but is 120.0001\u00a0mm²", fault("120.0001 mm2"));
        assertEquals("Size must be between 0.5\u00a0mm² and 120\u00a0mm², but is 0.499999\u00a0mm²", fault("0.499999 mm2"));
    }

    @Test
    void namesBothKindsWhenItIsNeither() {
        assertEquals(
                "Size cannot be in A. Enter a number between 0.5\u00a0mm² and 120\u00a0mm², or between 0.1\u00a0mm and 14\u00a0mm",
                fault("3 A"));
        assertEquals("Size is empty: enter a number between 0.5\u00a0mm² and 120\u00a0mm², or between 0.1\u00a0mm and 14\u00a0mm",
                fault(""));
    }

    @Test
    void offersTheUnitsOfBothKinds() {
        assertEquals(List.of(Units.SQUARE_MILLIMETRE, Units.AWG, Units.MILLIMETRE), SIZE.units());
        assertNull(SIZE.limits(Units.AMPERE));
    }

    /** A wide field must not blur its own lower limit. */
    @Test
    void aHighGreatestLeavesTheLeastSharp() {
        Limits limits = Limits.of(0.00001, 100_000, Units.AMPERE);
        assertTrue(limits.hold(Quantity.of(0.00001, Units.AMPERE)));
        assertFalse(limits.hold(Quantity.of(0.0000099, Units.AMPERE)));
        assertFalse(limits.hold(Quantity.of(100_001, Units.AMPERE)));
        assertTrue(limits.hold(Quantity.of(10, Units.MILLIAMPERE)));
    }

    private static Entries read(String text) {
        EntryReader reader = reader(text);
        assertTrue(reader.faults().isEmpty(), reader.faults().toString());
        return reader.entries();
    }

    private static String fault(String text) {
        return reader(text).faults().get(0).message();
    }

    private static EntryReader reader(String text) {
        EntryReader reader = new EntryReader();
        reader.read(new Description("k", "t", "q", List.of(), List.of(SIZE), List.of(), List.of()), Map.of("size", text));
        return reader;
    }
}
