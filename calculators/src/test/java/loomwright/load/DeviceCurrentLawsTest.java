package loomwright.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.worked.Trial;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class DeviceCurrentLawsTest {
    private static final double ROUNDED = 1e-6;

    /** What goes in is what comes out and the heat of the converter. */
    @Property(tries = 200)
    void energyInIsEnergyOutAndHeat(
            @ForAll @DoubleRange(min = 1, max = 5000) double watts, @ForAll @DoubleRange(min = 10, max = 100) double percent) {
        Trial trial = Trial.of("device-current", "power=" + text(watts), "efficiency=" + text(percent));
        double in = trial.value("input-power");
        assertEquals(1, in * percent / 100 / trial.value("device-power"), ROUNDED);
        assertTrue(in >= trial.value("device-power") * (1 - ROUNDED));
        assertEquals(1, trial.value("current") * 12 / in, ROUNDED);
        assertEquals(1, trial.value("current-at-lowest") * 10.5 / in, ROUNDED);
    }

    @Property(tries = 200)
    void theDesignCurrentIsNeverBelowAnyOther(
            @ForAll @DoubleRange(min = 1, max = 5000) double watts,
            @ForAll @DoubleRange(min = 10.5, max = 14.6) double supply,
            @ForAll LoadKind kind) {
        String key = new String[] {"constant-power", "resistive", "constant-current"}[kind.ordinal()];
        Trial trial = Trial.of("device-current", "power=" + text(watts), "supply-voltage=" + text(supply), "load-kind=" + key);
        double largest = trial.value("largest-current");
        for (String other : new String[] {"current", "current-at-lowest", "current-at-highest"}) {
            assertTrue(largest >= trial.value(other), other);
        }
    }

    /** The same watts at each kind of load cross at the supply voltage. */
    @Property(tries = 100)
    void allKindsAgreeAtTheSupplyVoltage(
            @ForAll @DoubleRange(min = 1, max = 5000) double watts, @ForAll @DoubleRange(min = 10.5, max = 14.6) double supply) {
        double first = current(watts, supply, "constant-power");
        assertEquals(first, current(watts, supply, "resistive"), first * ROUNDED);
        assertEquals(first, current(watts, supply, "constant-current"), first * ROUNDED);
    }

    private static double current(double watts, double supply, String kind) {
        return Trial.of("device-current", "power=" + text(watts), "supply-voltage=" + text(supply), "converter=none", "load-kind=" + kind).value("current");
    }

    private static String text(double number) {
        return String.format(Locale.ROOT, "%.9f", number);
    }
}
