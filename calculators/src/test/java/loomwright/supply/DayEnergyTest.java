package loomwright.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DayEnergyTest {
    private static final double ROUNDED = 0.0005;

    /** 12 W × 5 h; 12.8 V × 4 A × 0.5 h × 50 %; 12.8 V × 0.2 A × 24 h. */
    private static Trial evening() {
        return Trial.of(
                "day-energy", "load-1-power=12 W", "load-1-hours=5 h", "load-2-current=4 A", "load-2-hours=30 min", "load-2-duty=50 %",
                "standing-current=200 mA", "system-voltage=12.8 V");
    }

    @Test
    void addsEveryLoadAndTheStandingDraw() {
        assertEquals(60, evening().value("load-1-energy"), 1e-9);
        assertEquals(12.8, evening().value("load-2-energy"), 1e-9);
        assertEquals(61.44, evening().value("standing-energy"), 1e-9);
        assertEquals(134.24, evening().value("energy-per-day"), 1e-9);
        assertEquals(10.4875, evening().value("charge-per-day"), ROUNDED);
        assertEquals(0.43698, evening().value("average-current"), ROUNDED);
        assertFalse(evening().answers("load-3-energy"));
    }

    @Test
    void addsTheCurrentsWithoutRegardToTime() {
        // 0.2 A + 12 W ÷ 12.8 V + 4 A
        assertEquals(5.1375, evening().value("current-together"), 1e-9);
        assertEquals(1, Trial.of("day-energy", "load-8-power=12 W", "load-8-hours=1 h").value("current-together"), 1e-9);
    }

    @Test
    void takesAStandingDrawAlone() {
        Trial trial = Trial.of("day-energy", "standing-current=0.1 A");
        assertEquals(28.8, trial.value("energy-per-day"), 1e-9);
        assertEquals(2.4, trial.value("charge-per-day"), 1e-9);
        assertEquals(0.1, trial.value("average-current"), 1e-9);
        assertEquals(0.1, trial.value("current-together"), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            load-1-power=5 W;load-1-current=1 A;load-1-hours=1 h | load-1-current: Load 1 has both a power and a current: empty one of the two
            load-3-power=5 W | load-3-hours: Load 3 has no time: enter how long it is switched on in a day
            load-3-current=5 A | load-3-hours: Load 3 has no time: enter how long it is switched on in a day
            load-8-hours=2 h | load-8-power: Load 8 has a time but no power and no current: enter one of them, or empty the time
            load-1-duty=50 % | load-1-power: Load 1: power is empty, and so is every other load: enter at least one load or a standing draw
            """)
    void refusesAHalfFilledLine(String entries, String refusal) {
        assertEquals(refusal, Trial.of("day-energy", entries.split(";")).refusal());
    }

    @Test
    void recognisesEverySlip() {
        // 60 + 25.6 + 61.44; 60 + 12.8; 60 + 12.8 + 61 440; 134.24 taken as Ah; × 12.8; ÷ 12
        assertEquals("duty-left-out", evening().slipBehind("energy-per-day", "147.04 Wh"));
        assertEquals("standing-left-out", evening().slipBehind("energy-per-day", "72.8 Wh"));
        assertEquals("standing-in-milliamperes", evening().slipBehind("energy-per-day", "61512.8 Wh"));
        assertEquals("milliamperes-for-amperes", evening().slipBehind("standing-energy", "61440 Wh"));
        assertEquals("watt-hours-for-ampere-hours", evening().slipBehind("charge-per-day", "134.24 Ah"));
        assertEquals("multiplied-by-the-voltage", evening().slipBehind("charge-per-day", "1718.3 Ah"));
        assertEquals("another-voltage", evening().slipBehind("charge-per-day", "11.187 Ah"));
        assertEquals("DIFFERS", evening().slipBehind("charge-per-day", "77 Ah"));
    }

    @Test
    void offersTheOtherUsualVoltageAsASlip() {
        Trial trial = Trial.of("day-energy", "load-1-power=12 W", "load-1-hours=5 h");
        assertEquals("another-voltage", trial.slipBehind("charge-per-day", "4.6875 Ah"));
        assertEquals("DIFFERS", trial.slipBehind("energy-per-day", "30 Wh"));
        Trial standingOnly = Trial.of("day-energy", "standing-current=100 mA");
        assertTrue(standingOnly.working().slips().stream().noneMatch(slip -> slip.key().equals("standing-left-out")));
    }

    @Test
    void warnsOfAStandingDrawAsLargeAsALoad() {
        assertEquals(Verdict.CAUTION, evening().finding("The standing draw of a day, 61.4\u00a0Wh, is above what the largest load takes").verdict());
        Trial small = Trial.of("day-energy", "load-1-power=12 W", "load-1-hours=5 h", "load-2-power=6 W", "load-2-hours=1 h", "standing-current=10 mA");
        assertEquals(Verdict.PASSED, small.finding("is within what the largest load takes, 60\u00a0Wh").verdict());
        Trial equal = Trial.of("day-energy", "load-1-power=2.3 W", "load-1-hours=12 h", "standing-current=100 mA");
        assertEquals(Verdict.CAUTION, equal.finding("is above what the largest load takes").verdict());
    }

    @Test
    void remindsOfTheStandingDrawThatWasLeftOut() {
        // 1.7 W × 24 h
        Trial trial = Trial.of("day-energy", "load-1-power=12 W", "load-1-hours=5 h");
        assertEquals(40.8, trial.finding("No standing draw").figure().value(), 1e-9);
        assertEquals("common practice", trial.finding("No standing draw").source().standing().words());
    }

    @Test
    void carriesTheDayOn() {
        var next = evening().working().nextQuestions();
        assertEquals("battery-size", next.get(0).calculatorKey());
        assertEquals(Map.of("energy-per-day", "134.24\u00a0Wh", "battery-voltage", "12.8\u00a0V"), next.get(0).carried());
        assertEquals(Map.of("load-current", "0.437\u00a0A"), next.get(1).carried());
        assertEquals("panel-yield", next.get(2).calculatorKey());
    }
}
