package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.worked.Trial;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class VoltageDropLawsTest {
    private static final double ROUNDED = 1e-6;
    private static final String[] SIZES = {"0.5", "0.75", "1", "1.5", "2", "2.5", "3", "4", "6", "10", "16"};

    @Property(tries = 200)
    void doublesWhenLengthOrCurrentDoubles(
            @ForAll @DoubleRange(min = 0.1, max = 10) double amperes, @ForAll @DoubleRange(min = 0.1, max = 10) double metres) {
        double once = drop(amperes, metres, "4", 20);
        assertEquals(2 * once, drop(2 * amperes, metres, "4", 20), once * ROUNDED);
        assertEquals(2 * once, drop(amperes, 2 * metres, "4", 20), once * ROUNDED);
    }

    @Property(tries = 100)
    void fallsWithCrossSectionAndGrowsWithWarmth(
            @ForAll @IntRange(min = 0, max = 9) int size, @ForAll @IntRange(min = -50, max = 149) int celsius) {
        assertTrue(drop(1, 1, SIZES[size], celsius) > drop(1, 1, SIZES[size + 1], celsius));
        assertTrue(drop(1, 1, SIZES[size], celsius) < drop(1, 1, SIZES[size], celsius + 1));
    }

    /** What the supply gives is what the load gets and what the conductors lose. */
    @Property(tries = 200)
    void energyInIsEnergyOutAndLosses(
            @ForAll @DoubleRange(min = 0.1, max = 20) double amperes,
            @ForAll @DoubleRange(min = 0.1, max = 8) double metres,
            @ForAll @DoubleRange(min = 10, max = 30) double volts) {
        Trial trial = run(amperes, metres, "4", 20, "supply-voltage=" + text(volts) + " V");
        assertEquals(volts, trial.value("drop") + trial.value("voltage-at-load"), volts * ROUNDED);
        double lost = trial.value("power-lost");
        assertEquals(volts * amperes, trial.value("voltage-at-load") * amperes + lost, volts * amperes * ROUNDED);
        assertEquals(lost, amperes * amperes * trial.value("circuit-resistance") / 1000, lost * ROUNDED);
    }

    private static double drop(double amperes, double metres, String size, int celsius) {
        return run(amperes, metres, size, celsius, "supply-voltage=60 V").value("drop");
    }

    private static Trial run(double amperes, double metres, String size, int celsius, String more) {
        return Trial.of(
                "voltage-drop", "current=" + text(amperes) + " A", "route-length=" + text(metres) + " m", "conductor=iso-6722-1",
                "size=" + size + " mm2", "temperature=" + celsius + " °C", more);
    }

    private static String text(double number) {
        return String.format(Locale.ROOT, "%.9f", number);
    }
}
