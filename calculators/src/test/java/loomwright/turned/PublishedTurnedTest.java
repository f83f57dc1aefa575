package loomwright.turned;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Questions turned round whose answers stand in print. */
class PublishedTurnedTest {
    /** FAA AC 43.13-1B, Table 11-8, p. 11-22: the longest run, ground wire included. Its chart is read down to the half foot. */
    @ParameterizedTest(name = "FAA AC 43.13-1B, Table 11-8: for {0} V at 20 A, No. 10 may be {1} ft long")
    @CsvSource({"1, 39", "0.5, 19.5"})
    void theLongestRunOfAnAircraftManual(String limit, double printedFeet) {
        Turned turned = Asked.of(
                        "voltage-drop", "current=20 A", "length-counts=out-and-back", "route-length=1 ft", "method=given-resistance",
                        "resistance-per-length=0.00126 Ω/ft", "supply-voltage=28 V")
                .atMost("route-length", "drop", limit + " V");
        assertEquals(Turned.Kind.WORKED_OUT, turned.kind());
        // 1 V ÷ 20 A ÷ 0.00126 Ω/ft = 39.68 ft, printed as 39; half of it, 19.84 ft, printed as 19.5.
        assertEquals(printedFeet, turned.answer().value(), 0.7);
        assertTrue(printedFeet <= turned.answer().value());
        assertEquals(Double.parseDouble(limit) / 20 / 0.00126, turned.answer().value(), 0.01);
    }

    /** FAA AC 43.13-1B, Table 11-7, p. 11-22: the size for a run, ground wire included. */
    @ParameterizedTest(name = "FAA AC 43.13-1B, Table 11-7: {0} ft at 20 A and {1} V asks for No. {2}")
    @CsvSource({"107, 1, 6", "88, 4, 12"})
    void theSizeOfAnAircraftManual(String feet, String limit, double gauge) {
        Turned turned = Asked.of(
                        "voltage-drop", "current=20 A", "length-counts=out-and-back", "route-length=" + feet + " ft", "conductor=solid-copper",
                        "size=18 AWG", "temperature=20 °C", "supply-voltage=28 V")
                .atMost("size", "drop", limit + " V");
        assertEquals(gauge, turned.answer().value());
    }

    /** FAA AC 43.13-1B, paragraph 11-66: L2 = L1 × 254.5 ÷ (234.5 + T2). The factor of our tables, 0.00393 for one kelvin, is the same. */
    @ParameterizedTest(name = "FAA AC 43.13-1B, paragraph 11-66: at {0} °C the longest run is shorter by the printed formula")
    @CsvSource({"60", "100", "150"})
    void theLongestRunOfAWarmConductor(double temperature) {
        double cold = longest("20 °C");
        assertEquals(cold * 254.5 / (234.5 + temperature), longest(temperature + " °C"), cold * 0.001);
    }

    private static double longest(String temperature) {
        return Asked.of("voltage-drop", "current=10 A", "size=2.5 mm²", "temperature=" + temperature)
                .atMost("route-length", "drop-percent", "3 %").answer().value();
    }

    /**
     * The 12 V, 2 % wire-loss chart of the photovoltaic trade: greatest distance one way, in feet. Where it is right it lies up to 9 % below solid
     * copper at 20 °C, on the safe side; cells that contradict their own row are left out.
     */
    @ParameterizedTest(name = "2 % wire-loss chart: {0} A on {1} AWG may be {2} ft away")
    @CsvSource({
        "1, 14, 45", "1, 12, 70", "1, 10, 115", "1, 8, 180", "1, 6, 290", "1, 4, 456", "2, 14, 22.5", "2, 12, 35", "2, 10, 57.5", "2, 8, 90",
        "2, 6, 145", "2, 4, 228"
    })
    void theFarthestLoadOfAWireLossChart(String current, String gauge, double printedFeet) {
        Turned turned = Asked.of(
                        "voltage-drop", "current=" + current + " A", "route-length=1 ft", "conductor=solid-copper", "size=" + gauge + " AWG",
                        "temperature=20 °C")
                .atMost("route-length", "drop-percent", "2 %");
        double feet = turned.answer().in(Units.FEET).value();
        assertTrue(printedFeet <= feet && feet <= 1.09 * printedFeet, turned.words());
    }

    /**
     * The 12 V tables of small craft for 3 %, as a marine catalogue reprints them, 2021 and 2022: length out and back, SAE gauge. Cells of rows that
     * contradict the formula of the tables are left out.
     */
    @ParameterizedTest(name = "small-craft wire size, 3 %: {0} ft out and back at {1} A asks for {2} gauge")
    @CsvSource({
        "10, 10, 14", "10, 15, 12", "10, 25, 10", "10, 30, 10", "10, 40, 8", "10, 60, 6", "10, 70, 6", "10, 80, 6", "10, 90, 4",
        "20, 5, 14", "20, 10, 10", "20, 15, 10", "20, 20, 8", "20, 25, 6", "20, 30, 6", "20, 50, 4", "20, 70, 2"
    })
    void theGaugeOfASmallCraftTable(String feet, String current, double gauge) {
        Turned turned = Asked.of(
                        "voltage-drop", "current=" + current + " A", "length-counts=out-and-back", "route-length=" + feet + " ft",
                        "conductor=sae-by-area", "size=16 AWG", "method=circular-mil-10.75")
                .atMost("size", "drop", "0.36 V");
        assertEquals(gauge, turned.answer().value(), turned.words());
    }

    /** Thermal pages of solid-state relays, p. 8.52, example (a): 10 A, 1.2 V; 1.3, 0.1 and 1.0 K/W; junction at 100 °C: 71.2 °C. */
    @Test
    void theWarmestAirOfASolidStateSwitch() {
        Turned turned = Asked.of(
                        "junction-temperature", "current=10 A", "voltage-drop=1.2 V", "junction-to-case=1.3 K/W", "case-to-sink=0.1 K/W",
                        "sink-to-air=1.0 K/W")
                .atMost("ambient", "junction", "100 °C");
        assertEquals(71.2, turned.answer().value(), 0.05);
    }

    /** Peukert's law example problem: 100 Ah with exponent 1.2 lasts 6.31 h at 10 A (the form t = C ÷ I^k). */
    @Test
    void theCurrentOfAPeukertExample() {
        Turned turned = Asked.of("peukert", "capacity=100 Ah", "exponent=1.2", "load-current=1 A", "capacity-is=one-ampere")
                .atLeast("load-current", "run-time", "6.31 h");
        assertEquals(10, turned.answer().value(), 0.01);
    }
}
