package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.worked.Trial;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class SizeForRunLawsTest {
    private static final int[] FUSES = {5, 10, 15, 20, 25, 30, 40, 50, 60, 80};

    private static Trial trial(double amperes, double metres, String more) {
        String entries = String.format(Locale.ROOT, "current=%.6f A;route-length=%.6f m;conductor=nec-stranded;", amperes, metres) + more;
        return Trial.of("size-for-run", entries.split(";"));
    }

    /** The fuse-link stays within what its conductor allows, and the conductor carries the load. */
    @Property(tries = 200)
    void theFuseLinkNeverExceedsWhatItsConductorAllows(
            @ForAll @IntRange(max = 9) int fuse,
            @ForAll @DoubleRange(min = 0.1, max = 1) double loading,
            @ForAll @DoubleRange(min = 0.1, max = 10) double metres,
            @ForAll boolean allowsMore) {
        double amperes = FUSES[fuse] * loading;
        String rule = "rule-set=33-cfr-183;insulation-temperature=t75;fuse-rating=" + FUSES[fuse] + " A;fuse-rule=" + (allowsMore ? "33-cfr-183" : "conductor-ampacity");
        Trial trial = trial(amperes, metres, rule);
        if (trial.answers("chosen-gauge")) {
            double ampacity = trial.value("ampacity");
            assertTrue(FUSES[fuse] <= (allowsMore ? 1.5 : 1) * ampacity * (1 + 1e-9));
            assertTrue(amperes <= ampacity * (1 + 1e-6));
            assertTrue(trial.value("drop") <= 0.36 * (1 + 1e-6));
        }
    }

    @Property(tries = 200)
    void aLongerRouteNeverTakesAThinnerConductor(
            @ForAll @DoubleRange(min = 0.5, max = 30) double amperes, @ForAll @DoubleRange(min = 0.1, max = 5) double metres) {
        Trial here = trial(amperes, metres, "rule-set=drop-only");
        Trial longer = trial(amperes, 2 * metres, "rule-set=drop-only");
        if (longer.answers("chosen-gauge")) {
            assertTrue(longer.value("chosen-gauge") <= here.value("chosen-gauge"));
        }
    }
}
