package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SelectivityTest {
    private static final String TEN_UNDER_FORTY =
            "downstream-type=blade;downstream-rating=10 A;upstream-type=large-blade;upstream-rating=40 A;current=";

    private static Trial trial(String entries) {
        return Trial.of("selectivity", entries.split(";"));
    }

    /**
     * Worked by hand from printed gates. 54 A is 135 % of 40 A (60 s at the earliest, large blade sheet p. 3) and 540 % of 10 A (opened by
     * 5 s from the gate at 200 %, regular blade sheet). 80 A is 200 % of 40 A: 2 s. 160 A is 400 % of 40 A and 200 % of 80 A; 108 A is 135 % of 80 A.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            10 A blade, 40 A large blade, 54 A   | blade;10 A;large-blade;40 A;54 A   | 5 s   | 60 s  | Downstream first | PASSED
            10 A blade, 40 A large blade, 80 A   | blade;10 A;large-blade;40 A;80 A   | 5 s   | 2 s   | Not shown        | NOT_KNOWN
            40 A blade, 80 A large blade, 160 A  | blade;40 A;large-blade;80 A;160 A  | 0.5 s | 2 s   | Downstream first | PASSED
            40 A large blade, 40 A blade, 80 A   | large-blade;40 A;blade;40 A;80 A   | 50 s  | 0.15 s| Not shown        | NOT_KNOWN
            80 A large blade, 10 A miniature, 108 A | large-blade;80 A;miniature-blade;10 A;108 A | 1800 s | - | Upstream first | STOP
            """)
    void judgesByPrintedGates(String print, String entries, String latest, String earliest, String words, Verdict verdict) {
        String[] cells = entries.split(";");
        Trial trial = Trial.of(
                "selectivity", "downstream-type=" + cells[0], "downstream-rating=" + cells[1], "upstream-type=" + cells[2],
                "upstream-rating=" + cells[3], "current=" + cells[4]);
        assertEquals(0, trial.away("downstream-latest", latest), 1e-9);
        if (earliest.equals("-")) {
            assertFalse(trial.answers("upstream-earliest"));
        } else {
            assertEquals(0, trial.away("upstream-earliest", earliest), 1e-9);
        }
        assertEquals(verdict, trial.finding(words).verdict());
    }

    /** A fuse-link of a branch has to be rated below the one before it, whatever the gates say. */
    @Test
    void anEqualOrLargerRatingDownstreamIsNamed() {
        assertEquals(Verdict.CAUTION, trial("downstream-type=blade;downstream-rating=20 A;upstream-type=blade;upstream-rating=20 A;current=200 A")
                .finding("is not rated below").verdict());
        assertFalse(trial(TEN_UNDER_FORTY + "54 A").hasFinding("is not rated below"));
    }

    @Test
    void givesTheShareOfEachRating() {
        assertEquals(540, trial(TEN_UNDER_FORTY + "54 A").value("downstream-share"), 1e-9);
        assertEquals(135, trial(TEN_UNDER_FORTY + "54000 mA").value("upstream-share"), 1e-9);
    }

    @Test
    void showsNothingWhereAGateIsMissing() {
        // 600 A is 1500 % of 40 A: no gate gives an earliest time there
        assertTrue(trial(TEN_UNDER_FORTY + "600 A").finding("Not shown").words().contains("no earliest time is known"));
        // 12 A is 120 % of 10 A: no gate says that it opens
        assertTrue(trial(TEN_UNDER_FORTY + "12 A").finding("Not shown").words().contains("no latest time is known"));
    }

    @Test
    void letsFiguresFromMemoryDecideNothing() {
        Trial trial = trial("downstream-type=blade;downstream-rating=15 A;upstream-type=large-blade;upstream-rating=60 A;current=60 A");
        Finding finding = trial.finding("Downstream first");
        assertEquals(Verdict.NOT_KNOWN, finding.verdict());
        assertTrue(finding.words().contains("from memory"), finding.words());
    }

    @Test
    void letsTheTimesOfOneBreakerDecideNothing() {
        String breaker = "downstream-type=miniature-blade;downstream-rating=10 A;upstream-type=marine-breaker;upstream-rating=30 A;current=";
        // 29 A: 290 % of 10 A, opened by 5 s; the breaker needs 100 s at 30 A
        assertEquals(Verdict.NOT_KNOWN, trial(breaker + "29 A").finding("Downstream first").verdict());
        // 60 A: 5 s against 5 s
        assertEquals(Verdict.NOT_KNOWN, trial(breaker + "60 A").finding("Not shown").verdict());
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            earliest-of-downstream | downstream-latest | 0.02 s
            latest-of-upstream     | upstream-earliest | 1800 s
            share-turned-over      | downstream-share  | 18.52 %
            excess-only            | upstream-share    | 35 %
            ratings-swapped        | downstream-share  | 135 %
            ratings-swapped        | upstream-share    | 540 %
            """)
    void recognisesKnownSlips(String key, String asked, String answer) {
        assertEquals(key, trial(TEN_UNDER_FORTY + "54 A").slipBehind(asked, answer));
    }

    @Test
    void pointsAtTheRatingThatHasNoGates() {
        assertTrue(trial("downstream-type=blade;downstream-rating=50 A;upstream-type=large-blade;upstream-rating=80 A;current=60 A")
                .refusal()
                .startsWith("downstream-rating: Rating 50"));
    }

    /** Two devices can never both be shown to open first. */
    @Property(tries = 200)
    void neverShowsBothWays(@ForAll @DoubleRange(min = 1, max = 500) double amperes) {
        String current = String.format(Locale.ROOT, "current=%.6f A", amperes);
        Trial there = trial("downstream-type=blade;downstream-rating=40 A;upstream-type=large-blade;upstream-rating=60 A;" + current);
        Trial back = trial("downstream-type=large-blade;downstream-rating=60 A;upstream-type=blade;upstream-rating=40 A;" + current);
        assertEquals(there.hasFinding("Downstream first"), back.hasFinding("Upstream first"));
        assertFalse(there.hasFinding("Downstream first") && back.hasFinding("Downstream first"));
    }
}
