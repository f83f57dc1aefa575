package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples in print. The tolerance is half of the last printed digit, unless a line says why not. */
class VoltageDropPublishedTest {
    private static final String ALL = "length-counts=out-and-back";

    /** The run length counts the whole conductor, ground wire included (p. 11-26). */
    @ParameterizedTest(name = "FAA AC 43.13-1B {0}: {1} of {2}, {3}")
    @CsvSource({
        "'Table 11-7, first line', 107 ft, 0.00044 Ω/ft, 20 A, 0.942, 0.0005",
        "'Table 11-7, second line', 90 ft, 0.00028 Ω/ft, 20 A, 0.504, 0.0005",
        // printed 3.60, rounded loosely: the product of its own factors is 3.5552
        "'Table 11-7, third line', 88 ft, 0.00202 Ω/ft, 20 A, 3.60, 0.05",
        "'Table 11-8, first line', 39 ft, 0.00126 Ω/ft, 20 A, 0.98, 0.005",
        // the factors of the line; its printed product is the misprint tested below
        "'Table 11-8, second line, its factors', 19.5 ft, 0.00126 Ω/ft, 20 A, 0.4914, 0.00005"
    })
    void agreesWithTheAircraftManual(String line, String length, String resistance, String current, double printed, double tolerance) {
        Trial trial = Trial.asPrinted(
                "voltage-drop", "current=" + current, "route-length=" + length, ALL, "method=given-resistance",
                "resistance-per-length=" + resistance, "supply-voltage=28 V");
        assertEquals(printed, trial.value("drop"), tolerance);
    }

    /** Erratum: 0.366 V is printed beside factors that give 0.491 V. */
    @Test
    void doesNotAgreeWithTheMisprintOfTable118() {
        Trial trial = Trial.asPrinted(
                "voltage-drop", "current=20 A", "route-length=19.5 ft", ALL, "method=given-resistance",
                "resistance-per-length=0.00126 Ω/ft",
                "supply-voltage=28 V");
        assertTrue(trial.away("drop", "0.366 V") > 0.12);
        assertEquals("DIFFERS", trial.slipBehind("drop", "0.366 V"));
    }

    /** Vehicle cable of 0.30 mm strands; the page counts one conductor of 5 m. */
    @ParameterizedTest(name = "towing-electrics page, {0} mm²: {1} A through 5 m of {2} mΩ/m")
    @CsvSource({
        "0.65, 5.75, 29.4, 0.845", "1.0, 8.75, 18.9, 0.827", "1.5, 12.75, 12.5, 0.797", "2.0, 17.5, 9.4, 0.823", "2.5, 21.75, 7.5, 0.816",
        "3.0, 25.5, 6, 0.765"
    })
    void agreesWithThePageOnTowingCable(String size, String current, String resistance, double printed) {
        Trial trial = Trial.asPrinted(
                "voltage-drop", "current=" + current + " A", "route-length=5 m", ALL, "method=given-resistance",
                "resistance-per-length=" + resistance + " mΩ/m");
        // 12.75 A × 5 m × 12.5 mΩ/m is 0.796875 and 17.5 × 5 × 9.4 is 0.8225, printed 0.823
        assertEquals(printed, trial.value("drop"), 0.0005 + 1e-9);
    }

    /** 20 W at 12.7 V taken as 1.6 A, 22 m of wire in all, 1.5 mm², constant 0.0164. The page rounds 0.02624 to 0.026 on the way. */
    @Test
    void agreesWithTheMastHeadLamp() {
        assertEquals(0.38, mastHeadLamp("copper-0.0164").value("drop"), 0.005);
    }

    /** The same lamp with 1/58 at 20 °C is 0.4046 V (1.6 A × 22 m ÷ (58 × 1.5 mm²)): the constant hides 5 %. */
    @Test
    void findsMoreDropInTheMastThanTheConstantPromises() {
        assertEquals(0.4046, mastHeadLamp("table").value("drop"), 0.00005);
    }

    private static Trial mastHeadLamp(String method) {
        return Trial.asPrinted(
                "voltage-drop", "current=1.6 A", "route-length=22 m", ALL, "method=" + method, "conductor=copper-by-area", "size=1.5 mm2",
                "supply-voltage=12.7 V");
    }

    /** CM = 10.75 · 10 · 21 ÷ E, printed to whole circular mils: with that area the drop is E again. */
    @ParameterizedTest(name = "bilge pump, {0} circular mils: {1} V")
    @CsvSource({"6271, 0.36", "1881, 1.2"})
    void agreesWithTheBilgePump(String circularMils, double volts) {
        assertEquals(volts, bilgePump("copper-by-area", circularMils + " circular mil").value("drop"), volts * 0.5 / 1881);
    }

    /** The note goes to 10 gauge SAE, since 12 SAE has 5833 circular mils where 6271 are wanted; 12 AWG with 6500 would do. */
    @ParameterizedTest(name = "bilge pump in {1}, {0}: within 3 %: {2}")
    @CsvSource({"sae-by-area, 12 AWG, false", "sae-by-area, 10 AWG, true", "solid-copper, 12 AWG, true", "solid-copper, 14 AWG, false"})
    void choosesAsTheNoteOnTheBilgePumpDoes(String conductor, String size, boolean within) {
        assertEquals(within, bilgePump(conductor, size).value("drop") <= 0.36);
    }

    /** The catalogue prints 16 AWG for the same pump at 10 %. */
    @ParameterizedTest(name = "bilge pump in {0}: within 10 %: {1}")
    @CsvSource({"16 AWG, true", "18 AWG, false"})
    void choosesAsTheCatalogueDoesForTenPerCent(String size, boolean within) {
        assertEquals(within, bilgePump("solid-copper", size).value("drop") <= 1.2);
    }

    private static Trial bilgePump(String conductor, String size) {
        return Trial.asPrinted(
                "voltage-drop", "current=10 A", "route-length=21 ft", ALL, "method=circular-mil-10.75", "conductor=" + conductor, "size="
                        + size);
    }

    /** No. 16, 100 ft there and 100 ft back, 4 A, NEC chapter 9 table 8 at 75 °C: the page prints 4.0 V. */
    @Test
    void agreesWithTheTrainingPage() {
        Trial trial = Trial.asPrinted(
                "voltage-drop", "current=4 A", "route-length=100 ft", "conductor=nec-stranded", "size=16 AWG", "temperature=75 °C",
                "supply-voltage=24 V");
        assertEquals(4.0, trial.value("drop"), 0.05);
    }
}
