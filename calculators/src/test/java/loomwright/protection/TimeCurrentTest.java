package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.source.Standing;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeCurrentTest {
    private static Trial trial(String entries) {
        return Trial.of("time-current", entries.split(";"));
    }

    /** Gates as printed, at their own current. They are exact. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            Regular blade sheet, 10 A at 160 %          | fuse-type=blade;rating=10 A;current=16 A               | 0.25 s | 50 s
            Regular blade sheet, 10 A at 200 %          | fuse-type=blade;rating=10 A;current=20 A               | 0.15 s | 5 s
            Regular blade sheet p. 3, 35 A at 100 %     | fuse-type=blade;rating=35 A;current=35 A               | 100 h  | -
            Regular blade sheet p. 3, 40 A at 135 %     | fuse-type=blade;rating=40 A;current=54 A               | 0.75 s | 600 s
            Regular blade sheet p. 3, 40 A at 200 %     | fuse-type=blade;rating=40 A;current=80 A               | 0.15 s | 5 s
            Regular blade sheet p. 3, 40 A at 350 %     | fuse-type=blade;rating=40 A;current=140 A              | 0.08 s | 0.5 s
            Regular blade sheet p. 3, 40 A at 600 %     | fuse-type=blade;rating=40 A;current=240 A              | -      | 0.15 s
            Miniature blade sheet at 110 %              | fuse-type=miniature-blade;rating=10 A;current=11 A     | 100 h  | -
            Miniature blade sheet at 135 %              | fuse-type=miniature-blade;rating=10 A;current=13.5 A   | 0.75 s | 120 s
            Miniature blade sheet at 160 %              | fuse-type=miniature-blade;rating=10 A;current=16 A     | 0.3 s  | 50 s
            Miniature blade sheet at 200 %              | fuse-type=miniature-blade;rating=10 A;current=20 A     | 0.15 s | 5 s
            Large blade sheet p. 3, at 100 %            | fuse-type=large-blade;rating=40 A;current=40 A         | 100 h  | -
            Large blade sheet p. 3, at 135 %            | fuse-type=large-blade;rating=40 A;current=54 A         | 60 s   | 1800 s
            Large blade sheet p. 3, at 200 %            | fuse-type=large-blade;rating=40 A;current=80 A         | 2 s    | 50 s
            Large blade sheet p. 3, at 350 %            | fuse-type=large-blade;rating=40 A;current=140 A        | 0.2 s  | 7 s
            Large blade sheet p. 3, at 600 %            | fuse-type=large-blade;rating=40 A;current=240 A        | 0.04 s | 1 s
            Cartridge fuse guide p. 12, at 135 %        | fuse-type=cartridge;rating=20 A;current=27 A           | -      | 1 h
            Cartridge fuse guide p. 12, 30 A at 200 %   | fuse-type=cartridge;rating=30 A;current=60 A           | -      | 120 s
            Cartridge fuse guide p. 12, 35 A at 200 %   | fuse-type=cartridge;rating=35 A;current=70 A           | -      | 240 s
            Breaker note, at 100 %                      | fuse-type=marine-breaker;rating=30 A;current=30 A      | 100 s  | 100 s
            Breaker note, at 200 %                      | fuse-type=marine-breaker;rating=30 A;current=60 A      | 5 s    | 5 s
            """)
    void agreesWithPrint(String print, String entries, String earliest, String latest) {
        Trial trial = trial(entries);
        check(trial, "earliest", earliest, print);
        check(trial, "latest", latest, print);
    }

    private static void check(Trial trial, String asked, String expected, String print) {
        if (expected == null) {
            assertFalse(trial.answers(asked), print);
        } else {
            assertEquals(0, trial.away(asked, expected), 1e-9, print);
        }
    }

    @Test
    void statesTheBracketBetweenGates() {
        // 180 %: the gate at 200 % gives the earliest, the one at 160 % the latest
        Trial trial = trial("fuse-type=blade;rating=10 A;current=18 A");
        assertEquals(0.15, trial.value("earliest"), 0);
        assertEquals(50, trial.value("latest"), 0);
        Finding finding = trial.finding("Nothing is read between gates");
        assertEquals(Verdict.NOT_KNOWN, finding.verdict());
        assertTrue(finding.words().contains("0.15\u00a0s (gate at 200\u00a0%) and has opened by 50\u00a0s (gate at 160\u00a0%)"), finding.words());
    }

    @Test
    void claimsNothingBelowOrAboveAllGates() {
        Trial below = trial("fuse-type=large-blade;rating=40 A;current=45 A");
        assertFalse(below.answers("latest"));
        assertTrue(below.hasFinding("nothing says that it opens at all"));
        Trial above = trial("fuse-type=large-blade;rating=40 A;current=1000 A");
        assertFalse(above.answers("earliest"));
        assertTrue(above.hasFinding("may open at once"));
        Trial neither = trial("fuse-type=cartridge;rating=20 A;current=20 A");
        assertFalse(neither.answers("earliest") || neither.answers("latest"));
        assertTrue(neither.hasFinding("may open at once") && neither.hasFinding("nothing says that it opens at all"));
    }

    @Test
    void usesPrintBeforeMemory() {
        // memory has 0.5 s at 350 %, print has 5 s at 200 %
        Trial trial = trial("fuse-type=blade;rating=10 A;current=40 A;time-limit=1 s");
        assertEquals(5, trial.value("latest"), 0);
        assertEquals(Verdict.NOT_KNOWN, trial.finding("1\u00a0s wanted").verdict());
    }

    @Test
    void marksGatesFromMemory() {
        Trial used = trial("fuse-type=blade;rating=15 A;current=60 A;time-limit=1 s");
        assertEquals(0.5, used.value("latest"), 0);
        assertEquals(Verdict.NOT_KNOWN, used.finding("within the").verdict());
        assertEquals(Standing.FROM_MEMORY, used.finding("350\u00a0% is from memory").source().standing());
        Trial aside = trial("fuse-type=blade;rating=10 A;current=18 A");
        assertTrue(aside.finding("Left aside").words().contains("350\u00a0% 0.04\u00a0s to 0.5\u00a0s"), aside.finding("Left aside").words());
        assertFalse(trial("fuse-type=large-blade;rating=40 A;current=54 A").hasFinding("memory"));
        assertEquals(Verdict.NOT_KNOWN, trial("fuse-type=small-strip;rating=50 A;current=100 A;time-limit=20 s").finding("within the").verdict());
    }

    @Test
    void takesTheTimesOfOneBreakerForNoLimit() {
        Trial trial = trial("fuse-type=marine-breaker;rating=30 A;current=60 A;time-limit=10 s");
        assertEquals(Verdict.NOT_KNOWN, trial.finding("within the").verdict());
        assertTrue(trial.hasFinding("that of one breaker"));
    }

    @Test
    void holdsTheLatestTimeAgainstALimit() {
        String fuse = "fuse-type=large-blade;rating=40 A;current=80 A;time-limit=";
        assertEquals(Verdict.PASSED, trial(fuse + "50 s").finding("is within the time wanted").verdict());
        assertEquals(Verdict.NOT_KNOWN, trial(fuse + "49 s").finding("do not show").verdict());
        assertEquals(Verdict.NOT_KNOWN, trial(fuse + "2 s").finding("do not show").verdict());
        assertEquals(Verdict.STOP, trial(fuse + "1900 ms").finding("The earliest time at which it opens, 2\u00a0s, is above the time wanted, 1.9\u00a0s").verdict());
        assertEquals(Verdict.NOT_KNOWN, trial("fuse-type=large-blade;rating=40 A;current=30 A;time-limit=200 h").finding("do not show").verdict());
    }

    @Test
    void refusesRatingsWithoutGates() {
        assertEquals(
                "rating: Rating 50\u00a0A has no opening times listed for a blade fuse-link: enter 1\u00a0A to 40\u00a0A, or choose another kind",
                trial("fuse-type=blade;rating=50 A;current=100 A").refusal());
        assertEquals(
                "rating: Rating 15\u00a0A has no opening times listed for a large blade fuse-link: enter 20\u00a0A to 80\u00a0A, or choose another kind",
                trial("fuse-type=large-blade;rating=15 A;current=100 A").refusal());
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            share-turned-over       | share-percent | 55.56 %
            excess-only             | share-percent | 80 %
            gate-above-for-latest   | latest        | 5 s
            gate-below-for-earliest | earliest      | 0.25 s
            times-swapped           | latest        | 0.15 s
            times-swapped           | earliest      | 50 s
            AGREES                  | latest        | 50 s
            """)
    void recognisesKnownSlips(String key, String asked, String answer) {
        assertEquals(key, trial("fuse-type=blade;rating=10 A;current=18 A").slipBehind(asked, answer));
    }

    @Property(tries = 300)
    void moreCurrentNeverOpensLater(@ForAll @DoubleRange(min = 1, max = 700) double percent, @ForAll @DoubleRange(min = 1, max = 2) double more) {
        Trial here = large(percent);
        Trial there = large(percent * more);
        if (here.answers("latest")) {
            assertTrue(there.value("latest") <= here.value("latest"));
        }
        if (there.answers("earliest")) {
            assertTrue(there.value("earliest") <= here.value("earliest"));
        }
        if (here.answers("latest") && here.answers("earliest")) {
            assertTrue(here.value("earliest") <= here.value("latest"));
        }
    }

    private static Trial large(double percent) {
        return trial(String.format(Locale.ROOT, "fuse-type=large-blade;rating=40 A;current=%.6f A", percent * 0.4));
    }
}
