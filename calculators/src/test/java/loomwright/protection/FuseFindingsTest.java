package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

class FuseFindingsTest {
    @Test
    void warnsOfARatingAboveTheAmpacity() {
        // 18 AWG, 105 °C: 20 A, at most 30 A; 17 A ÷ 0.8 = 21.25 A: the rating is 25 A
        Trial trial = trial("design-current=17 A", "size=18 AWG", "rule-set=33-cfr-183");
        assertEquals(25, trial.value("chosen-rating"), 1e-12);
        assertEquals(Verdict.CAUTION, trial.finding("a small overload may last").verdict());
        assertEquals(Verdict.PASSED, trial.finding("within 30\u00a0A, 150\u00a0% of what the conductor may carry").verdict());
        assertEquals(Verdict.PASSED, trial("design-current=2 A", "size=16 AWG", "rule-set=33-cfr-183").finding("is also within").verdict());
    }

    @Test
    void holdsTheLoadingAgainstTheBorrowedRule() {
        Finding finding = trial("design-current=2 A", "size=16 AWG").finding("66.7\u00a0% of the rating");
        assertEquals(Verdict.PASSED, finding.verdict());
        assertTrue(finding.words().contains("a rule for mains that 12 V work has borrowed"), finding.words());
        assertTrue(finding.source().locus().startsWith("210.20(A)"), finding.source().locus());
        assertFalse(trial("design-current=2 A", "size=16 AWG", "continuous=no").hasFinding("of the rating, within"));
    }

    @Test
    void saysThatTheReRatingIsOfOnePartOnly() {
        Finding finding = trial("design-current=2 A", "size=16 AWG", "ambient=30 °C").finding("re-rating is printed for");
        assertEquals(Verdict.CAUTION, finding.verdict());
        assertTrue(finding.words().endsWith("and 65\u00a0°C for 30\u00a0°C."), finding.words());
        assertFalse(trial("design-current=2 A", "size=16 AWG").hasFinding("re-rating"));
    }

    @Test
    void warnsOfAPlaceWarmerThanTheTable() {
        assertTrue(trial("design-current=2 A", "size=16 AWG", "ambient=31 °C").hasFinding("The ampacity holds for 30\u00a0°C"));
        assertFalse(trial("design-current=2 A", "size=16 AWG", "ambient=30 °C").hasFinding("The ampacity holds for"));
        assertTrue(trial("design-current=2 A", "size=16 AWG", "ambient=51 °C",
                "engine-space=yes").hasFinding("The ampacity holds for 50\u00a0°C"));
        assertFalse(trial("design-current=2 A", "size=16 AWG", "ambient=50 °C", "engine-space=yes").hasFinding("The ampacity holds for"));
    }

    @Test
    void warnsOfTheBreakingCapacityNearABattery() {
        for (String type : List.of("blade", "large-blade")) {
            Finding finding = trial("design-current=2 A", "size=8 AWG", "fuse-type=" + type).finding("can break 1000\u00a0A at 32\u00a0V");
            assertEquals(Verdict.CAUTION, finding.verdict());
            assertTrue(finding.words().contains("1000\u00a0A to 2000\u00a0A"), finding.words());
        }
    }

    @Test
    void warnsOfAConductorTooSmallForTheRuleSet() {
        assertEquals(
                Verdict.CAUTION, trial("design-current=2 A", "size=18 AWG", "rule-set=33-cfr-183").finding("asks for 16\u00a0AWG")
                        .verdict());
        assertFalse(trial("design-current=2 A", "size=16 AWG", "rule-set=33-cfr-183").hasFinding("asks for 16"));
        assertFalse(trial("design-current=2 A", "size=18 AWG").hasFinding("asks for 16"));
    }

    @Test
    void saysWhenARatingIsFromMemory() {
        assertEquals(Verdict.CAUTION, trial("design-current=3.2 A", "size=16 AWG").finding("4\u00a0A is made is from memory").verdict());
        assertFalse(trial("design-current=4 A", "size=16 AWG").hasFinding("is made is from memory"));
    }

    private static Trial trial(String... entries) {
        List<String> all = new ArrayList<>(List.of("insulation-temperature=t105"));
        all.addAll(List.of(entries));
        return Trial.of("fuse-choice", all.toArray(new String[0]));
    }
}
