package loomwright.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Map;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TwoRoutesTest {
    private static final double ROUNDED = 0.005;

    /** 60 W for 2 h into the device: 120 Wh. */
    private static Trial laptop() {
        return Trial.of(
                "two-routes", "device-power=60 W", "charging-hours=2 h", "direct-efficiency=80 %", "direct-standing=0.5 W", "direct-hours=12 h",
                "inverter-efficiency=90 %", "inverter-standing=8 W", "inverter-hours=10 h", "adapter-efficiency=80 %", "adapter-standing=2 W");
    }

    @Test
    void countsBothRoutesOverTheDay() {
        // 120 ÷ 0.8 + 0.5 × 10; 120 ÷ 0.72 + 10 × 8
        assertEquals(120, laptop().value("device-energy"), 1e-9);
        assertEquals(155, laptop().value("direct-energy"), 1e-9);
        assertEquals(246.667, laptop().value("inverter-energy"), ROUNDED);
        assertEquals(91.667, laptop().value("difference"), ROUNDED);
        assertEquals(7.639, laptop().value("difference-charge"), ROUNDED);
        assertEquals(35, laptop().value("direct-lost"), 1e-9);
        assertEquals(126.667, laptop().value("inverter-lost"), ROUNDED);
        assertEquals(48.649, laptop().value("inverter-route-efficiency"), ROUNDED);
        // 120 ÷ (246.667 − 5)
        assertEquals(49.655, laptop().value("break-even-efficiency"), ROUNDED);
    }

    @Test
    void breaksEvenAtTheEfficiencyItSays() {
        Trial even = Trial.of(
                "two-routes", "device-power=60 W", "charging-hours=120 min", "direct-efficiency=72 %", "direct-hours=2 h",
                "inverter-efficiency=90 %", "inverter-standing=0 W", "inverter-hours=2 h", "adapter-efficiency=80 %");
        assertEquals(0, even.value("difference"), 1e-9);
        assertEquals(72, even.value("break-even-efficiency"), 1e-9);
    }

    @Test
    void knowsNoBreakEvenWhenTheIdleChargerAloneTakesMore() {
        Trial idle = Trial.of(
                "two-routes", "device-power=1 W", "charging-hours=1 h", "direct-standing=5 W", "inverter-efficiency=90 %", "inverter-standing=0 W",
                "inverter-hours=1 h",
                "adapter-efficiency=80 %");
        assertFalse(idle.answers("break-even-efficiency"));
        assertEquals(Verdict.CAUTION, idle.finding("What the direct way takes").verdict());
        assertEquals("Switch the direct charger off when it is not charging, or check the efficiencies you entered.", idle.finding("What the direct way takes").remedy());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            direct-hours=1 h | direct-hours: Time the direct charger is switched on is 1 h, but it charges for 2 h: enter at least the time it charges
            inverter-hours=30 min | inverter-hours: Time the inverter is switched on is 0.5 h, but it charges for 2 h: enter at least the time it charges
            """)
    void refusesAPartSwitchedOffWhileItCharges(String entry, String refusal) {
        Trial trial =
                Trial.of(
                        "two-routes", "device-power=60 W", "charging-hours=2 h", "inverter-efficiency=90 %", "inverter-standing=8 W",
                        "adapter-efficiency=80 %", entry);
        assertEquals(refusal, trial.refusal().replace('\u00a0', ' '));
    }

    @Test
    void recognisesEverySlip() {
        // 120 × 0.8 + 5; 120 + 5; 120 ÷ 0.9 + 80; 120 ÷ 0.85 + 80; 120 × 0.72 + 80; 120 ÷ 0.72
        assertEquals("multiplied-by-the-efficiency", laptop().slipBehind("direct-energy", "101 Wh"));
        assertEquals("efficiency-left-out", laptop().slipBehind("direct-energy", "125 Wh"));
        assertEquals("adapter-left-out", laptop().slipBehind("inverter-energy", "213.33 Wh"));
        assertEquals("efficiencies-averaged", laptop().slipBehind("inverter-energy", "221.18 Wh"));
        assertEquals("multiplied-by-both-efficiencies", laptop().slipBehind("inverter-energy", "166.4 Wh"));
        Trial other = Trial.of(
                "two-routes", "device-power=60 W", "charging-hours=2 h", "inverter-efficiency=90 %", "inverter-standing=10 W",
                "adapter-efficiency=80 %");
        assertEquals("standing-left-out", other.slipBehind("inverter-energy", "166.67 Wh"));
    }

    @Test
    void doubtsAnEfficiencyAboveAllPrint() {
        assertEquals(Verdict.PASSED, laptop().finding("What the direct way takes in a day, 155\u00a0Wh, is within what the way by inverter takes, 247\u00a0Wh.").verdict());
        assertFalse(laptop().hasFinding("best we have seen"));
        String[] rest = {"device-power=60 W", "charging-hours=2 h", "inverter-efficiency=90 %", "adapter-efficiency=80 %", "inverter-standing=8 W", ""};
        rest[5] = "direct-efficiency=97 %";
        assertFalse(Trial.of("two-routes", rest).hasFinding("best we have seen"));
        rest[5] = "direct-efficiency=98 %";
        assertEquals(97, Trial.of("two-routes", rest).finding("is above the best we have seen published, 97").limit().value(), 1e-9);
    }

    @Test
    void carriesTheAverageIntoTheDay() {
        assertEquals(Map.of("load-1-power", "6.458\u00a0W", "load-1-hours", "24 h"), laptop().working().nextQuestions().get(0).carried());
    }
}
