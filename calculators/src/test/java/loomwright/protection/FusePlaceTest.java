package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FusePlaceTest {
    private static Trial trial(String ruleSet, String distance) {
        return Trial.of("fuse-place", "rule-set=" + ruleSet, "distance=" + distance);
    }

    /** Distances as printed; they are exact. */
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            33 CFR 183.455(b)(1)                       | 33-cfr-source      | 7 in
            33 CFR 183.455(b)(2)                       | 33-cfr-sheathed    | 40 in
            ABYC E-11 older, magazine answer           | abyc-older         | 72 in
            ABYC E-11 newer, article on battery banks  | abyc-newer         | 7 in
            ISO 13297:2020, 12.3                       | iso-13297-charging | 1.8 m
            ISO 13590:2018, origin of the conductor    | iso-13590-origin   | 180 mm
            ISO 13590:2018, sheathed                   | iso-13590-sheathed | 500 mm
            ISO 13590:2018, from a storage battery     | iso-13590-battery  | 900 mm
            NEC 552.10(E)(4)                           | nec-552            | 18 in
            """)
    void agreesWithPrint(String print, String ruleSet, String limit) {
        Trial trial = trial(ruleSet, limit);
        assertEquals(0, trial.away("limit", limit), 1e-9);
        assertEquals(0, trial.value("remaining"), 1e-9);
        Finding finding = trial.finding("is within the limit of");
        assertEquals(Verdict.PASSED, finding.verdict());
        assertTrue(finding.source().standing().mayPass());
    }

    @Test
    void stopsBehindTheLimit() {
        Finding finding = trial("33-cfr-source", "7.1 in").finding("is above the limit of");
        assertEquals(Verdict.STOP, finding.verdict());
        assertTrue(finding.words().contains("the limit of 33 CFR 183.455(b)"), finding.words());
        assertEquals(-0.1, trial("33-cfr-source", "7.1 in").working().result("remaining").quantity().in(loomwright.quantity.Units.INCHES).value(), 1e-9);
        assertEquals(0.26, trial("iso-13590-battery", "64 cm").value("remaining"), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"iso-10133-source"})
    void letsARuleFromMemoryStopAndNeverPass(String ruleSet) {
        assertEquals(Verdict.NOT_KNOWN, trial(ruleSet, "1 cm").finding("within").verdict());
        assertEquals(Verdict.STOP, trial(ruleSet, "10 m").finding("above").verdict());
        assertTrue(trial(ruleSet, "1 cm").finding("within").words().contains("from memory"));
    }

    @Test
    void namesTheStrictestRuleWhereAnotherAllowsMore() {
        Finding finding = trial("abyc-older", "1 m").finding("is above the limit of");
        assertEquals(Verdict.CAUTION, finding.verdict());
        assertEquals(7, finding.limit().value(), 0);
        assertFalse(trial("abyc-older", "17 cm").hasFinding("above the limit of ABYC E-11, newer"));
        assertFalse(trial("33-cfr-source", "1 m").hasFinding("above the limit of ABYC E-11, newer"));
    }

    @Test
    void showsWhatEachRuleSetSays() {
        ChoiceStep step = (ChoiceStep) trial("nec-552", "0.4 m").working().steps().get(0);
        assertEquals(10, step.candidates().size());
        assertEquals(1, step.candidates().stream().filter(candidate -> candidate.taken()).count());
        assertEquals("up to 7\u00a0in: does not", step.candidates().get(0).reason());
        assertEquals("up to 40\u00a0in: allows it", step.candidates().get(1).reason());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            inches-as-centimetres | 33-cfr-source      | limit     | 7 cm
            other-situation       | 33-cfr-source      | limit     | 40 in
            other-situation       | 33-cfr-sheathed    | limit     | 7 in
            other-situation       | iso-13590-origin   | limit     | 0.5 m
            other-situation       | iso-13590-sheathed | limit     | 0.18 m
            other-rule-set        | nec-552            | limit     | 72 in
            turned-round          | nec-552            | remaining | -0.3572 m
            """)
    void recognisesKnownSlips(String key, String ruleSet, String asked, String answer) {
        assertEquals(key, trial(ruleSet, "0.1 m").slipBehind(asked, answer));
    }

    @Property(tries = 100)
    void passesExactlyWhatLeavesRoom(@ForAll @DoubleRange(min = 0, max = 2) double metres) {
        Trial trial = trial("iso-13590-battery", String.format(Locale.ROOT, "%.6f m", metres));
        Verdict verdict = trial.finding("The length of conductor").verdict();
        assertEquals(trial.value("remaining") >= -1e-9 ? Verdict.PASSED : Verdict.STOP, verdict);
    }
}
