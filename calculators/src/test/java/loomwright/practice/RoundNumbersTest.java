package loomwright.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Which numbers can come in the place of a given one: all of them, written down by hand from what is sold, or met on the job. */
class RoundNumbersTest {
    private static final int SEEDS = 3000;

    private record Case(double given, Unit unit, boolean rating, double... others) {}

    private static final List<Case> CASES = List.of(
            // Sizes two up and two down, as far as the series goes; a size that is not sold stays.
            new Case(14, Units.AWG, false, 18, 16, 12, 10),
            new Case(22, Units.AWG, false, 20, 18),
            new Case(0, Units.AWG, false, 2, 1, -1, -2),
            new Case(-3, Units.AWG, false, -1, -2),
            new Case(2.5, Units.SQUARE_MILLIMETRE, false, 1, 1.5, 4, 6),
            new Case(0.5, Units.SQUARE_MILLIMETRE, false, 0.75, 1),
            new Case(120, Units.SQUARE_MILLIMETRE, false, 70, 95),
            new Case(3, Units.SQUARE_MILLIMETRE, false),
            // Ratings likewise.
            new Case(1, Units.AMPERE, true, 2, 3),
            new Case(10, Units.AMPERE, true, 5, 7.5, 15, 20),
            new Case(300, Units.AMPERE, true, 225, 250),
            new Case(12, Units.AMPERE, true),
            // Temperatures and shares by fives.
            new Case(20, Units.CELSIUS, false, 5, 10, 15, 25, 30, 35),
            new Case(22, Units.CELSIUS, false, 5, 10, 15, 20, 25, 30, 35),
            new Case(-5, Units.CELSIUS, false, -20, -15, -10, 0, 5, 10),
            new Case(68, Units.FAHRENHEIT, false, 55, 60, 65, 70, 75, 80, 85),
            new Case(50, Units.PERCENT, false, 30, 35, 40, 45, 55, 60, 65, 70),
            new Case(20, Units.PERCENT, false, 0, 5, 10, 15, 25, 30, 35, 40),
            new Case(95, Units.PERCENT, false, 75, 80, 85, 90),
            new Case(80, Units.PERCENT, false, 60, 65, 70, 75, 85, 90, 95),
            new Case(100, Units.PERCENT, false),
            new Case(10, Units.PERCENT, false, 5, 6, 7, 7.5, 8, 9, 12, 15, 16, 18, 20),
            // Counts by ones, never none; exponents and factors by five hundredths, on the same side of one.
            new Case(4, Units.ONE, false, 2, 3, 5, 6),
            new Case(2, Units.ONE, false, 1, 3, 4),
            new Case(1.25, Units.ONE, false, 1.15, 1.2, 1.3, 1.35),
            new Case(1.05, Units.ONE, false, 1.1, 1.15),
            new Case(0.95, Units.ONE, false, 0.85, 0.9, 1),
            new Case(0.05, Units.ONE, false, 0.1, 0.15),
            // Voltages of a 12 V system at rest, under load and on charge; of one that is nearly empty; of 24 V; of ports and adapters.
            new Case(12, Units.VOLT, false, 11.8, 12.2, 12.5, 12.8, 13.2, 13.6, 14.4),
            new Case(11, Units.VOLT, false, 10, 10.5, 10.8, 11.4),
            new Case(14.9, Units.VOLT, false, 11.8, 12, 12.2, 12.5, 12.8, 13.2, 13.6, 14.4),
            new Case(10, Units.VOLT, false, 10.5, 10.8, 11, 11.4),
            new Case(10.9, Units.VOLT, false, 10, 10.5, 10.8, 11, 11.4),
            new Case(11.5, Units.VOLT, false, 11.8, 12, 12.2, 12.5, 12.8, 13.2, 13.6, 14.4),
            new Case(24, Units.VOLT, false, 23.6, 24.4, 25, 25.6, 26.4, 27.2, 28, 28.8),
            new Case(22, Units.VOLT, false, 23.6, 24, 24.4, 25, 25.6, 26.4, 27.2, 28, 28.8),
            new Case(30, Units.VOLT, false, 23.6, 24, 24.4, 25, 25.6, 26.4, 27.2, 28, 28.8),
            new Case(5, Units.VOLT, false, 9, 15, 20),
            new Case(15, Units.VOLT, false, 5, 9, 20),
            new Case(20, Units.VOLT, false, 5, 9, 15),
            // Anything else: two digits, from half of it to twice it, both included.
            new Case(8, Units.VOLT, false, 4, 4.5, 5, 6, 7, 7.5, 9, 10, 12, 15, 16),
            new Case(21, Units.VOLT, false, 12, 15, 16, 18, 20, 22, 25, 30, 35, 40),
            new Case(4, Units.VOLT, false, 2, 2.2, 2.5, 3, 3.5, 4.5, 5, 6, 7, 7.5, 8),
            new Case(0.004, Units.OHM, false, 0.002, 0.0022, 0.0025, 0.003, 0.0035, 0.0045, 0.005, 0.006, 0.007, 0.0075, 0.008),
            new Case(1.5e-9, Units.OHM, false, 1e-9, 1.2e-9, 1.6e-9, 1.8e-9, 2e-9, 2.2e-9, 2.5e-9, 3e-9),
            new Case(5e9, Units.OHM, false, 2.5e9, 3e9, 3.5e9, 4e9, 4.5e9, 6e9, 7e9, 7.5e9, 8e9, 9e9),
            new Case(0, Units.AMPERE, false),
            new Case(-5, Units.AMPERE, false));

    @TestFactory
    Stream<DynamicTest> givesJustTheNumbersOfItsKind() {
        return CASES.stream().map(each -> DynamicTest.dynamicTest(each.given + " " + each.unit.symbol() + (each.rating ? " rated" : ""), () -> {
            TreeSet<Double> expected = new TreeSet<>();
            for (double other : each.others) {
                expected.add(rounded(other));
            }
            if (expected.isEmpty()) {
                expected.add(each.given);
            }
            TreeSet<Double> found = new TreeSet<>();
            for (int seed = 1; seed <= SEEDS; seed++) {
                Quantity near = RoundNumbers.near("current", Quantity.of(each.given, each.unit), each.rating, new Seeds(seed));
                assertEquals(each.unit, near.unit());
                found.add(rounded(near.value()));
            }
            assertEquals(new ArrayList<>(expected), new ArrayList<>(found));
        }));
    }

    private static double rounded(double value) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.6e", value)) + 0.0;
    }

    /** A run lies in a van; a battery and a panel are bought. */
    @org.junit.jupiter.api.Test
    void runsBatteriesAndPanelsAreSuchAsAreMet() {
        assertAmong("route-length", "4.2 m", "2.2 m", "2.5 m", "2.8 m", "3 m", "3.2 m", "3.5 m", "3.8 m", "4 m", "4.5 m", "4.8 m", "5 m", "5.5 m", "6 m", "6.5 m", "7 m", "7.5 m", "8 m");
        assertAmong("distance", "4 ft", "2 ft", "3 ft", "5 ft", "6 ft", "7 ft", "8 ft");
        assertAmong("capacity", "50 Ah", "40 Ah", "60 Ah", "70 Ah", "75 Ah", "80 Ah", "90 Ah", "95 Ah", "100 Ah");
        assertAmong("panel-power", "250 W", "130 W", "140 W", "150 W", "160 W", "175 W", "180 W", "190 W", "200 W", "220 W", "240 W", "300 W");
    }

    private static void assertAmong(String field, String given, String... wanted) {
        java.util.Set<String> found = new java.util.HashSet<>();
        for (int seed = 1; seed <= 400; seed++) {
            found.add(RoundNumbers.near(field, loomwright.quantity.QuantityText.read(given, null).quantity(), false, new Seeds(seed)).text().replace('\u00a0', ' '));
        }
        org.junit.jupiter.api.Assertions.assertEquals(java.util.Set.of(wanted), found);
    }
}
