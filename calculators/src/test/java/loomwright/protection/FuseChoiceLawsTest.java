package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.conductor.Insulation;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class FuseChoiceLawsTest {
    private static final double ROUNDED = 1e-9;

    /** The one law that matters: a fuse-link chosen never exceeds what its conductor allows, and always carries its load. */
    @Property(tries = 1000)
    void aChosenRatingLiesBetweenTheLimitsOrTheWorkingStops(
            @ForAll @DoubleRange(min = 0.01, max = 600) double amperes,
            @ForAll @DoubleRange(min = 0.9, max = 150) double area,
            @ForAll Insulation insulation,
            @ForAll RuleSet rules,
            @ForAll boolean continuous,
            @ForAll boolean engineSpace,
            @ForAll boolean large,
            @ForAll @IntRange(min = -40, max = 125) int ambient) {
        Trial trial = Trial.of(
                "fuse-choice", "ambient=30 °C", "design-current=" + text(amperes) + " A", "size=" + text(area) + " mm2",
                "insulation-temperature=" + insulation.column(), "fuse-rule="
                        + (rules == RuleSet.US_33_CFR ? "33-cfr-183" : "conductor-ampacity"),
                "continuous=" + (continuous ? "yes" : "no"), "engine-space=" + (engineSpace ? "yes" : "no"),
                "fuse-type=" + (large ? "large-blade" : "blade"), "fuse-ambient=" + ambient + " °C");
        boolean stops = trial.working().findings().stream().map(Finding::verdict).anyMatch(Verdict.STOP::equals);
        assertEquals(stops, !trial.answers("chosen-rating"));
        if (!stops) {
            double rating = trial.value("chosen-rating");
            double share = rules == RuleSet.US_33_CFR ? 1.5 : 1;
            assertTrue(rating <= share * trial.value("ampacity") * (1 + ROUNDED));
            assertTrue(rating * (continuous ? 0.8 : 1) >= amperes * (1 - 1e-6));
            assertTrue(amperes <= trial.value("ampacity") * (1 + ROUNDED));
        }
    }

    @Property(tries = 200)
    void warmerNeverAsksForLess(@ForAll @IntRange(min = -40, max = 124) int ambient, @ForAll @IntRange(min = 0, max = 40) int rise) {
        int warmer = Math.min(125, ambient + rise);
        assertTrue(least(warmer) >= least(ambient));
    }

    /** The row that stands in for a metric size has no less resistance than a flexible cable of that name may have. */
    @Test
    void theStandInRowIsNeverTheThickerConductor() {
        for (Row metric : PublishedTables.iec60228().rows()) {
            Quantity size = metric.quantity("size");
            if (size.value() >= 1) {
                ChoiceStep step = (ChoiceStep) Trial.of("fuse-choice", "ambient=30 °C", "design-current=0.1 A", "size=" + size.text()).working().steps()
                        .get(0);
                // NEC chapter 9 table 8 is for 75 °C; 254.5 ÷ 309.5 brings it to 20 °C
                Row row = PublishedTables.necCh9Table8().find("size", step.result());
                double at20 = row.quantity("resistance").in(Units.MILLIOHM_PER_METRE).value() * 254.5 / 309.5;
                assertTrue(at20 >= metric.quantity("class-5").value(), () -> size.text() + " by " + step.result().text() + ": " + at20);
            }
        }
    }

    private static double least(int ambient) {
        return Trial.of("fuse-choice", "ambient=30 °C", "design-current=5 A", "size=10 AWG", "fuse-ambient=" + ambient + " °C").value("least-rating");
    }

    private static String text(double number) {
        return String.format(Locale.ROOT, "%.6f", number);
    }
}
