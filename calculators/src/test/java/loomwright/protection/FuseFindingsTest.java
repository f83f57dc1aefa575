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
        Trial trial = trial("design-current=17 A", "size=18 AWG", "fuse-rule=33-cfr-183");
        assertEquals(25, trial.value("chosen-rating"), 1e-12);
        assertEquals(Verdict.CAUTION, trial.finding("the bare ampacity of the conductor").verdict());
        assertEquals(Verdict.PASSED, trial.finding("is within 150\u00a0% of what the conductor behind it may carry, 30\u00a0A").verdict());
        assertEquals(Verdict.PASSED, trial("design-current=2 A", "size=16 AWG", "fuse-rule=33-cfr-183").finding("the bare ampacity of the conductor").verdict());
    }

    @Test
    void holdsTheLoadingAgainstTheBorrowedRule() {
        Finding finding = trial("design-current=2 A", "size=16 AWG").finding("The load's share of the rating, 66.7\u00a0%");
        assertEquals(Verdict.PASSED, finding.verdict());
        assertTrue(finding.words().contains("a rule for mains that 12 V work has borrowed"), finding.words());
        assertTrue(finding.source().locus().startsWith("210.20(A)"), finding.source().locus());
        assertFalse(trial("design-current=2 A", "size=16 AWG", "continuous=no").hasFinding("share of the rating"));
    }

    @Test
    void saysThatTheReRatingIsOfOnePartOnly() {
        Finding finding = trial("design-current=2 A", "size=16 AWG", "fuse-ambient=30 °C").finding("re-rating is printed for");
        assertEquals(Verdict.NOT_KNOWN, finding.verdict());
        assertEquals("warm-share", finding.missing().key());
        assertTrue(finding.words().endsWith("and 65\u00a0°C for 30\u00a0°C."), finding.words());
        assertFalse(trial("design-current=2 A", "size=16 AWG").hasFinding("re-rating"));
    }

    @Test
    void warnsOfAPlaceWarmerThanTheTable() {
        String warmer = "its ampacity was worked out for";
        assertTrue(trial("design-current=2 A", "size=16 AWG", "fuse-ambient=31 °C").hasFinding(warmer + ", 30\u00a0°C"));
        assertFalse(trial("design-current=2 A", "size=16 AWG", "fuse-ambient=30 °C").hasFinding(warmer));
        assertTrue(trial("design-current=2 A", "size=16 AWG", "fuse-ambient=51 °C", "engine-space=yes").hasFinding(warmer + ", 50\u00a0°C"));
        assertFalse(trial("design-current=2 A", "size=16 AWG", "fuse-ambient=50 °C", "engine-space=yes").hasFinding(warmer));
    }

    @Test
    void warnsOfTheBreakingCapacityNearABattery() {
        for (String type : List.of("blade", "large-blade")) {
            Finding finding = trial("design-current=2 A", "size=8 AWG", "fuse-type=" + type).finding("can break 1000\u00a0A at 32\u00a0V");
            assertEquals(Verdict.NOT_KNOWN, finding.verdict());
            assertEquals("prospective-current", finding.missing().key());
        }
    }

    @Test
    void warnsOfAConductorTooSmallForTheRuleSet() {
        assertEquals(
                Verdict.CAUTION, trial("design-current=2 A", "size=18 AWG", "fuse-rule=33-cfr-183").finding("the 16\u00a0AWG that this rule set asks for")
                        .verdict());
        assertFalse(trial("design-current=2 A", "size=16 AWG", "fuse-rule=33-cfr-183").hasFinding("this rule set asks for"));
        assertFalse(trial("design-current=2 A", "size=18 AWG").hasFinding("this rule set asks for"));
    }

    @Test
    void saysWhenARatingIsFromMemory() {
        assertEquals(Verdict.NOT_KNOWN, trial("design-current=3.2 A", "size=16 AWG").finding("4\u00a0A is made is from memory").verdict());
        assertFalse(trial("design-current=4 A", "size=16 AWG").hasFinding("is made is from memory"));
    }

    private static Trial trial(String... entries) {
        List<String> all = new ArrayList<>(List.of("insulation-temperature=t105", "ambient=30 °C"));
        all.addAll(List.of(entries));
        return Trial.of("fuse-choice", all.toArray(new String[0]));
    }

    /** A blade fuse-link breaks 1000 A by its sheet. */
    @Test
    void holdsTheProspectiveCurrentAgainstTheKind() {
        String[] entries = {"design-current=2 A", "size=16 AWG", ""};
        entries[2] = "prospective-current=900 A";
        assertEquals(Verdict.PASSED, trial(entries).finding("can break").verdict());
        entries[2] = "prospective-current=1.2 kA";
        assertEquals(Verdict.STOP, trial(entries).finding("can break").verdict());
    }

    /** 2 A ÷ (80 % × 90 %) = 2.778 A. */
    @Test
    void takesTheReRatingOfTheReadersOwnSheet() {
        Trial own = trial("design-current=2 A", "size=16 AWG", "fuse-ambient=60 °C", "warm-share=90 %");
        assertEquals(2 / 0.72, own.value("least-rating"), 1e-9);
        assertFalse(own.hasFinding("re-rating"));
    }

    @Test
    void saysWhatItTookForGranted() {
        assertTrue(Trial.of("fuse-choice", "design-current=2 A", "size=16 AWG").hasFinding(
                "Assuming insulation for 60\u00a0°C and 40\u00a0°C around it: The fuse-link chosen"));
        assertFalse(trial("design-current=2 A", "size=16 AWG").hasFinding("Assuming"));
    }

    /** 12 A for hours on 1 mm² with 60 °C insulation: 18 AWG stands in with 10 A, so the load alone is too much. */
    @Test
    void stopsTwelveAmperesOnOneSquareMillimetreUnlessARuleThatAllowsMoreIsChosen() {
        Trial careful = Trial.of("fuse-choice", "ambient=30 °C", "design-current=12 A", "size=1 mm2");
        assertFalse(careful.answers("chosen-rating"));
        assertEquals(Verdict.STOP, careful.finding("The design current").verdict());
    }
}
