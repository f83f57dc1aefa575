package loomwright.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.worked.Trial;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class UsbPowerBudgetLawsTest {
    private static final double ROUNDED = 1e-6;

    @Property(tries = 200)
    void powerInIsPowerOutAndHeat(
            @ForAll @DoubleRange(min = 0.5, max = 240) double watts,
            @ForAll @DoubleRange(min = 10, max = 100) double efficiency,
            @ForAll @DoubleRange(min = 0, max = 5) double own) {
        Trial trial = Trial.of(
                "usb-power-budget", "port-1-level=pd", "port-1-power=" + text(watts), "port-1-cable=5-a-50-v", "efficiency=" + text(efficiency),
                "own-draw=" + text(own));
        assertEquals(1, (trial.value("output-power") + trial.value("heat")) / trial.value("input-power"), ROUNDED);
        assertTrue(trial.value("heat") >= -ROUNDED);
        assertEquals(1, trial.value("current") * 12 / trial.value("input-power"), ROUNDED);
        assertTrue(trial.value("current-at-lowest") > trial.value("current"));
    }

    @Property(tries = 200)
    void noPortOfPowerDeliveryPassesFiveAmperes(@ForAll @DoubleRange(min = 0.5, max = 240) double watts) {
        Trial trial = Trial.of("usb-power-budget", "port-1-level=pd", "port-1-power=" + text(watts), "port-1-cable=5-a-50-v");
        assertTrue(trial.value("port-1-current") <= (watts <= 60 ? 3 : 5) * (1 + ROUNDED));
        assertEquals(1, trial.value("port-1-current") * trial.value("port-1-voltage") / watts, ROUNDED);
    }

    @Property(tries = 100)
    void theOutletGivesNoMoreThanItsLimitNorItsPorts(@ForAll @DoubleRange(min = 0.5, max = 200) double limit) {
        Trial trial = Trial.of("usb-power-budget", "port-1-level=type-c-3", "port-2-level=pd", "port-2-power=45 W", "shared-limit=" + text(limit));
        assertEquals(Math.min(limit, 60), trial.value("output-power"), ROUNDED);
    }

    private static String text(double number) {
        return String.format(Locale.ROOT, "%.9f", number);
    }
}
