package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.worked.Trial;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class FaultCurrentLawsTest {
    private static final String[] SIZES = {"0.5", "0.75", "1", "1.5", "2.5", "4", "6", "10", "16"};
    private static final String[] KINDS = {"iso-6722-1", "iec-60228-class-5", "iec-60228-class-2", "copper-by-area"};

    private static Trial trial(String kind, String size, double metres, double celsius) {
        return Trial.of(
                "fault-current", "conductor=" + kind, "branch-size=" + size + " mm²",
                String.format(Locale.ROOT, "branch-route-length=%.6f m", metres), String.format(Locale.ROOT, "temperature=%.4f °C", celsius));
    }

    @Property(tries = 200)
    void fallsWithTheLengthAndRisesWithTheSize(
            @ForAll @IntRange(max = 7) int size, @ForAll @IntRange(max = 3) int kind, @ForAll @DoubleRange(min = 0.1, max = 90) double metres) {
        Trial here = trial(KINDS[kind], SIZES[size], metres, 20);
        Trial longer = trial(KINDS[kind], SIZES[size], 2 * metres, 20);
        Trial thicker = trial(KINDS[kind], SIZES[size + 1], metres, 20);
        for (String end : new String[] {"highest-current", "lowest-current"}) {
            assertTrue(longer.value(end) < here.value(end), end);
            assertTrue(thicker.value(end) > here.value(end), end);
        }
    }

    @Property(tries = 200)
    void theHighestIsNeverBelowTheLowest(
            @ForAll @IntRange(max = 8) int size,
            @ForAll @IntRange(max = 3) int kind,
            @ForAll @DoubleRange(min = 0.1, max = 100) double metres,
            @ForAll @DoubleRange(min = -40, max = 120) double celsius) {
        Trial trial = trial(KINDS[kind], SIZES[size], metres, celsius);
        assertTrue(trial.value("highest-current") >= trial.value("lowest-current"));
    }
}
