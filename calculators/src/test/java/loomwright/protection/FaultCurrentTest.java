package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.source.Standing;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FaultCurrentTest {
    private static final String ENTERED = "battery=given;battery-resistance-low=4 mΩ;battery-resistance-high=10 mΩ;highest-voltage=12 V;lowest-voltage=12 V;";
    private static final String RUN = ENTERED + "branch-size=2.5 mm²;branch-route-length=4.2 m;";

    private static Trial trial(String entries) {
        return Trial.asPrinted("fault-current", entries.split(";"));
    }

    /** Figures in print, and arithmetic by hand on printed rows. The tolerance is half of the last digit written. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Article on breaking capacity: 100 Ah lead-acid, possibly 4000 A      | battery=lead-acid-100-ah;highest-voltage=12 V;lowest-voltage=12 V                           | highest-current         | 4000 A   | 0.5
            Article on breaking capacity: 100 Ah lead-acid, 1000 A               | battery=lead-acid-100-ah;highest-voltage=12 V;lowest-voltage=12 V                           | lowest-current          | 1000 A   | 0.5
            Resistance that 4000 A at 12 V implies                               | battery=short-circuit-current;short-circuit-current=4 kA;battery-voltage=12 V | battery-resistance-low | 3 mΩ  | 0.0005
            Text on interrupting capacity: parallel batteries add, 2 × 4000 A    | battery=lead-acid-100-ah;highest-voltage=12 V;lowest-voltage=12 V;batteries-in-parallel=2   | highest-current         | 8000 A   | 0.5
            LiFePO4 pack data, at most 50 mΩ: 12.8 V ÷ 0.050 Ω                   | battery=lifepo4-small-pack;lowest-voltage=12.8 V                        | lowest-current          | 256 A    | 0.05
            School exercise: 12 V and 0.2 Ω (shown to be unreal)                 | battery=given;battery-resistance-low=0.2 Ω;battery-resistance-high=0.2 Ω;highest-voltage=12 V;lowest-voltage=12 V | highest-current | 60 A | 0.05
            Large blade sheet, 30 A, 1.9 mΩ: 12 V ÷ (4 + 1.9) mΩ                 | battery=given;battery-resistance-low=4 mΩ;battery-resistance-high=10 mΩ;highest-voltage=12 V;lowest-voltage=12 V;fuse-link=large-blade-30 | highest-current | 2033.9 A | 0.05
            Large blade sheet, 35 A, 1.7 mΩ: 12 V ÷ (4 + 1.7) mΩ                 | battery=given;battery-resistance-low=4 mΩ;battery-resistance-high=10 mΩ;highest-voltage=12 V;lowest-voltage=12 V;fuse-link=large-blade-35 | highest-current | 2105.3 A | 0.05
            Large blade sheet, 40 A, 1.4 mΩ: 12 V ÷ (10 + 1.4) mΩ                | battery=given;battery-resistance-low=4 mΩ;battery-resistance-high=10 mΩ;highest-voltage=12 V;lowest-voltage=12 V;fuse-link=large-blade-40 | lowest-current  | 1052.6 A | 0.05
            Regular blade sheet, 40 A, 1.44 mΩ: 12 V ÷ (10 + 1.44) mΩ            | battery=given;battery-resistance-low=4 mΩ;battery-resistance-high=10 mΩ;highest-voltage=12 V;lowest-voltage=12 V;fuse-link=blade-40       | lowest-current  | 1049.0 A | 0.05
            ISO 6722-1, 2.5 mm², 7.60 mΩ/m × 8.4 m = 63.84 mΩ: 12 V ÷ 73.84 mΩ   | battery=given;battery-resistance-low=4 mΩ;battery-resistance-high=10 mΩ;highest-voltage=12 V;lowest-voltage=12 V;branch-size=2.5 mm²;branch-route-length=4.2 m | lowest-current | 162.51 A | 0.005
            IEC 60028, 1/58: 8.4 m of 2.5 mm² is 57.931 mΩ: 12 V ÷ 61.931 mΩ     | battery=given;battery-resistance-low=4 mΩ;battery-resistance-high=10 mΩ;highest-voltage=12 V;lowest-voltage=12 V;branch-size=2.5 mm²;branch-route-length=4.2 m | highest-current | 193.76 A | 0.005
            """)
    void agreesWithPrint(String print, String entries, String asked, String expected, double tolerance) {
        double off = trial(entries).away(asked, expected);
        assertTrue(off <= tolerance, print + " is off by " + off);
    }

    @Test
    void addsEveryPartOfTheLoop() {
        // 6 mm²: 3.14 mΩ/m × 1 m; 2.5 mm²: 63.84 mΩ; joints 5 mΩ; fuse-link 1.9 mΩ; battery 10 mΩ
        Trial trial = trial(RUN + "feed-size=6 mm²;feed-route-length=0.5 m;joint-resistance=5 mΩ;fuse-link=given;fuse-resistance=0.0019 Ω");
        assertEquals(3.14 + 63.84 + 5 + 1.9 + 10, trial.value("loop-resistance-high"), 1e-9);
        // least: 1000/58/6 × 1 m + 1000/58/2.5 × 8.4 m + 1.9 + 4; no joints
        assertEquals(2.8736 + 57.9310 + 1.9 + 4, trial.value("loop-resistance-low"), 0.0002);
        assertEquals(3000, trial.value("battery-current-highest"), 1e-6);
    }

    @Test
    void warmsOnlyTheConductorsOfTheLowestCurrent() {
        Trial warm = trial(RUN + "temperature=70 °C");
        assertEquals(trial(RUN).value("highest-current"), warm.value("highest-current"), 1e-9);
        // 63.84 mΩ × 304.5/254.5 = 76.38 mΩ
        assertEquals(86.38, warm.value("loop-resistance-high"), 0.01);
        assertTrue(trial(RUN + "temperature=-20 °C").value("highest-current") > warm.value("highest-current"));
    }

    @Test
    void doesNotInventALeastResistance() {
        Trial trial = trial("battery=lifepo4-small-pack");
        assertFalse(trial.answers("highest-current"));
        assertEquals(Verdict.NOT_KNOWN, trial.finding("stays unknown").verdict());
    }

    @Test
    void letsAFigureFromMemoryPassNothing() {
        String far = ";branch-size=1 mm²;branch-route-length=10 m";
        assertEquals(Verdict.NOT_KNOWN, trial("battery=lifepo4-100-ah" + far).finding("blade fuse-link").verdict());
        assertEquals(Verdict.NOT_KNOWN, trial("battery=starting-60-ah" + far).finding("blade fuse-link").verdict());
        assertEquals(Verdict.PASSED, trial("battery=lead-acid-100-ah" + far).finding("blade fuse-link").verdict());
        Finding memory = trial("battery=starting-60-ah").finding("from memory: no one could look it up");
        assertEquals(Standing.FROM_MEMORY, memory.source().standing());
        assertEquals("short-circuit-current", memory.missing().key());
    }

    /** Highest: 14.6 V behind 3 mΩ; lowest: 10.5 V behind 12 mΩ. */
    @Test
    void takesTheChargedBatteryForTheHighestAndTheEmptyOneForTheLowest() {
        Trial careful = trial("battery=lead-acid-100-ah");
        assertEquals(14.6 / 0.003, careful.value("highest-current"), 1e-6);
        assertEquals(875, careful.value("lowest-current"), 1e-6);
        assertTrue(careful.hasFinding("Assuming a 12 V lead-acid battery of 100 Ah"));
        assertEquals(
                "lowest-voltage: Lowest voltage at the battery is above the highest, 12\u00a0V: enter the smaller of the two here",
                trial("highest-voltage=12 V;lowest-voltage=13 V").refusal());
    }

    /** 60 Ah has 100/60 of the resistance of 100 Ah: 3 mΩ becomes 5 mΩ, 12 mΩ becomes 20 mΩ. 14.6 V ÷ 5 mΩ = 2920 A. */
    @Test
    void bringsARangeInPrintToTheSizeOfTheBatteryAndPassesNothingOnIt() {
        Trial sixty = trial("battery=lead-acid-100-ah;capacity=60 Ah;branch-size=1 mm²;branch-route-length=10 m");
        assertEquals(5, sixty.value("battery-resistance-low"), 1e-9);
        assertEquals(20, sixty.value("battery-resistance-high"), 1e-9);
        assertEquals(2920, sixty.value("battery-current-highest"), 1e-6);
        Finding blade = sixty.finding("blade fuse-link");
        assertEquals(Verdict.NOT_KNOWN, blade.verdict());
        assertEquals(Standing.INVENTED, blade.source().standing());
        assertEquals(3, trial("battery=lead-acid-100-ah;capacity=100 Ah").value("battery-resistance-low"), 1e-9);
    }

    @Test
    void warnsWhereABladeFuseLinkCannotBreakTheCurrent() {
        Finding finding = trial("battery=lead-acid-100-ah").finding("blade fuse-link");
        assertEquals(Verdict.CAUTION, finding.verdict());
        assertEquals(1000, finding.limit().value(), 0);
    }

    @Test
    void namesTheResistanceOfSchoolExercises() {
        assertTrue(trial("battery=given;battery-resistance-low=0.06 Ω;battery-resistance-high=2 Ω").hasFinding("school exercises"));
        assertFalse(trial("battery=given;battery-resistance-low=49 mΩ;battery-resistance-high=2 Ω").hasFinding("school exercises"));
    }

    @Test
    void doesNotCountOnTheElectronicSwitch() {
        assertTrue(trial("battery=lifepo4-100-ah").finding("electronic switch").remedy().startsWith("Do not count on"));
        assertFalse(trial("battery=lead-acid-100-ah").hasFinding("electronic switch"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            battery=given                                                     | battery-resistance-low: Least inside resistance of one battery is needed here: enter a number
            battery=given;battery-resistance-low=5 mΩ                         | battery-resistance-high: Greatest inside resistance of one battery is needed here: enter a number
            battery=given;battery-resistance-low=5 mΩ;battery-resistance-high=4 mΩ | battery-resistance-low: Least inside resistance of one battery is above the greatest, 4\u00a0mΩ: enter the smaller of the two here
            battery=short-circuit-current                                     | short-circuit-current: Short-circuit current of one battery is needed here: enter a number
            fuse-link=given                                                   | fuse-resistance: Cold resistance of the fuse-links on the way is needed here: enter a number
            fuse-resistance=2 mΩ                                              | fuse-link: Fuse-link on the way is none although a cold resistance is entered: choose the one that I enter, or empty the field
            feed-size=6 mm²                                                   | feed-route-length: Feed: route length is empty although Feed: size of conductor is not: fill both, or empty both
            branch-route-length=2 m                                           | branch-size: Branch: size of conductor is empty although Branch: route length is not: fill both, or empty both
            branch-size=2.2 mm²;branch-route-length=2 m                       | branch-size: Size 2.2\u00a0mm² is not in this table, which lists mm². Choose 2\u00a0mm² (thinner) or 2.5\u00a0mm² (thicker), or another kind of conductor
            """)
    void refusesWhatItCannotReckonWith(String entries, String refusal) {
        assertEquals(refusal, trial(entries).refusal());
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            one-way-length      | highest-current | 363.97 A
            one-way-length      | lowest-current  | 286.3 A
            conductors-left-out | highest-current | 3000 A
            conductors-left-out | lowest-current  | 1200 A
            battery-left-out    | highest-current | 207.1 A
            battery-left-out    | lowest-current  | 187.97 A
            school-resistance   | highest-current | 111.2 A
            ends-swapped        | highest-current | 162.5 A
            ends-swapped        | lowest-current  | 193.8 A
            AGREES              | highest-current | 193.8 A
            """)
    void recognisesKnownSlips(String key, String asked, String answer) {
        assertEquals(key, trial(RUN).slipBehind(asked, answer));
    }
}
