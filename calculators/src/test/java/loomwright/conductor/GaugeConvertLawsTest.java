package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.worked.Trial;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class GaugeConvertLawsTest {
    private static final double ROUNDED = 1e-6;

    /** A size with enough copper never has less than the size it replaces, and nothing smaller would do. */
    @Property(tries = 300)
    void theFirstSizeWithEnoughCopperHasEnough(@ForAll @DoubleRange(min = 0.01, max = 107) double area) {
        Trial trial = Trial.of("gauge-convert", "size=" + text(area) + " mm2");
        assertTrue(trial.value("next-larger-metric") >= area * (1 - ROUNDED));
        double awg = trial.working().result("next-larger-awg").quantity().base() * 1e6;
        assertTrue(awg >= area * (1 - ROUNDED));
        double nearest = Math.abs(trial.value("nearest-metric") - area);
        assertTrue(nearest <= Math.abs(trial.value("next-larger-metric") - area) + ROUNDED);
    }

    @Property(tries = 44)
    void threeGaugesAreAboutDoubleTheCopper(@ForAll @IntRange(min = 0, max = 40) int gauge) {
        assertEquals(2, area(gauge - 3) / area(gauge), 0.01);
    }

    @Property(tries = 200)
    void areaToDiameterToAreaIsTheSame(@ForAll @DoubleRange(min = 0.01, max = 149) double area) {
        double diameter = Trial.of("gauge-convert", "size=" + text(area) + " mm2").value("diameter");
        double back = Trial.of("gauge-convert", "size=" + text(diameter) + " mm").value("area");
        assertEquals(1, back / area, 1e-5);
    }

    private static double area(int gauge) {
        String name = gauge > 0 ? gauge + " AWG" : 1 - gauge + "/0 AWG";
        return Trial.of("gauge-convert", "size=" + name).value("area");
    }

    private static String text(double number) {
        return String.format(Locale.ROOT, "%.9f", number);
    }
}
