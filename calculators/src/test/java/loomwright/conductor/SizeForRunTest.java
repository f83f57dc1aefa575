package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.source.Standing;
import loomwright.worked.Candidate;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SizeForRunTest {
    private static final String BENCH = "current=8 A;route-length=4.2 m;";
    private static final String CORD = BENCH + "rule-set=bs-7671-cord;";
    private static final String STRANDED = "rule-set=33-cfr-183;conductor=nec-stranded;insulation-temperature=t105;";

    private static Trial trial(String entries) {
        return Trial.asPrinted("size-for-run", entries.split(";"));
    }

    @Test
    void takesTheThinnestThatPassesEveryCheck() {
        // 0.36 V ÷ (8 A × 8.4 m) = 5.357 mΩ/m; 4 mm² has 4.71 mΩ/m, so 0.3165 V; the cord table gives it 32 A
        Trial trial = trial(CORD + "fuse-rating=15 A");
        assertEquals(5.357, trial.value("highest-resistance-per-metre"), 0.0005);
        assertEquals(4, trial.value("chosen-size"), 1e-12);
        assertEquals(0.3165, trial.value("drop"), 0.00005);
        assertEquals(2.638, trial.value("drop-percent"), 0.0005);
        assertEquals(32, trial.value("ampacity"), 1e-12);
        assertEquals(32, trial.value("fuse-limit"), 1e-12);
        assertFalse(trial.answers("chosen-gauge"));
    }

    @Test
    void saysWhyEachThinnerSizeWasLeft() {
        ChoiceStep choice = choice(trial(CORD + "fuse-rating=20 A"));
        assertEquals(9, choice.candidates().size());
        assertEquals("loses 3.66\u00a0V, above 0.36\u00a0V; no ampacity for it in this rule set, only that it carries less than 3\u00a0A", reason(choice, "0.35\u00a0mm²"));
        assertEquals(
                "loses 0.853\u00a0V, above 0.36\u00a0V; allows a fuse-link of 16\u00a0A, below 20\u00a0A", reason(choice, "1.5\u00a0mm²"));
        assertEquals("loses 0.511\u00a0V, above 0.36\u00a0V", reason(choice, "2.5\u00a0mm²"));
        assertEquals("the thinnest that passes", reason(choice, "4\u00a0mm²"));
    }

    @Test
    void letsTheAmpacityDecideOnAShortRun() {
        // 60 A over 2 × 0.1 m: 0.36 V allows 30 mΩ/m, which 18 AWG keeps; 60 A asks for 10 AWG by Table 5 at 105 °C
        Trial trial = trial(STRANDED + "current=60 A;route-length=0.1 m");
        assertEquals(0, trial.away("chosen-gauge", "10 AWG"), 1e-9);
        assertEquals("ampacity-left-out", trial.slipBehind("chosen-gauge", "18 AWG"));
    }

    @Test
    void letsTheFuseLinkDecideByItsRule() {
        // 60 A wants 10 AWG; a 100 A fuse-link is above its 60 A and its 90 A, within 120 A of 8 AWG, and within 120 A alone of 6 AWG
        String run = STRANDED + "current=60 A;route-length=0.1 m;fuse-rating=100 A;";
        assertEquals(0, trial(run + "fuse-rule=33-cfr-183").away("chosen-gauge", "8 AWG"), 1e-9);
        assertEquals(0, trial(run).away("chosen-gauge", "6 AWG"), 1e-9);
        assertEquals(120, trial(run + "fuse-rule=33-cfr-183").value("fuse-limit"), 1e-9);
        Finding caution = trial(run + "fuse-rule=33-cfr-183").finding("above the ampacity");
        assertEquals(Verdict.CAUTION, caution.verdict());
        assertFalse(trial(run).hasFinding("above the ampacity"));
    }

    @Test
    void inventsNoAmpacity() {
        // the towing page names no temperature, so at 40 °C it says nothing
        Trial trial = trial("current=8 A;route-length=6 m;rule-set=towing-cable;ambient=40 °C");
        assertFalse(trial.answers("chosen-size"));
        Finding stop = trial.finding("No size of this series passes");
        assertEquals(Verdict.STOP, stop.verdict());
        assertTrue(stop.words().contains("no ampacity"), stop.words());
        assertTrue(stop.remedy().contains("made up"), stop.remedy());
        // 6 mm² is not on it: the row of 3 mm² stands in
        assertEquals(25.5, trial("current=8 A;route-length=6 m;rule-set=towing-cable").value("ampacity"), 1e-9);
    }

    @Test
    void opensWithTheCarefulCase() {
        // 40 °C: 4 mm² loses 0.3165 V × 274.5 ÷ 254.5 = 0.3414 V, within 5 % of 0.36 V is 0.342; 12 AWG stands in, 25 A × 0.82
        Trial trial = Trial.of("size-for-run", "current=8 A", "route-length=4.2 m");
        assertEquals(4, trial.value("chosen-size"), 1e-12);
        assertEquals(0.3414, trial.value("drop"), 0.00005);
        assertEquals(20.5, trial.value("ampacity"), 1e-9);
        assertTrue(trial.finding("design current").words().startsWith("Assuming insulation for 60\u00a0°C and 40\u00a0°C around it"));
    }

    @Test
    void saysThatAHairIsClose() {
        // 8 A × 2 × 1.78 m × 12.7 mΩ/m = 0.3617 V is above; × 1.765 m = 0.3587 V leaves 0.4 %
        Finding finding = trial("current=8 A;route-length=1.765 m;rule-set=bs-7671-cord").finding("The drop with 1.5");
        assertEquals(Verdict.CAUTION, finding.verdict());
        assertTrue(finding.words().contains("only just within"), finding.words());
    }

    @Test
    void readsTheAmpacityOfSaeGaugeByItsArea() {
        String run = "current=10 A;route-length=1 m;conductor=sae-by-area;rule-set=";
        // by the free-air table that row is 13 A
        assertEquals(13, trial(run + "nec-free-air").value("ampacity"), 1e-9);
        assertFalse(trial(run + "nec-free-air").answers("chosen-gauge"));
        // 16 SAE has 2336 circular mils, 16 AWG 2583, 18 AWG 1624: the row of 18 AWG stands in, 10 A at 60 °C
        assertEquals(1.18, trial(run + "33-cfr-183").value("chosen-sae-area"), 1e-9);
        assertEquals(10, trial(run + "33-cfr-183").value("ampacity"), 1e-9);
        // by drop alone: 0.36 V ÷ (10 A × 2 m) = 18 mΩ/m; 16 SAE has 1000/58/1.18 = 14.6 mΩ/m and 2336 circular mils
        Trial byDrop = trial(run + "drop-only");
        assertEquals(1.18, byDrop.value("chosen-sae-area"), 1e-9);
        assertEquals("2336\u00a0circular mil", byDrop.working().nextQuestions().get(0).carried().get("size"));
    }

    @Test
    void saysThatDropAloneIsNotEnough() {
        Trial trial = trial(BENCH + "rule-set=drop-only");
        assertEquals(4, trial.value("chosen-size"), 1e-12);
        assertEquals(Verdict.CAUTION, trial.finding("by drop alone").verdict());
        assertFalse(trial.answers("ampacity"));
    }

    @Test
    void takesTheLimitInVoltsOrPerCent() {
        double percent = trial(BENCH + "rule-set=drop-only;allowance=10 %").value("highest-resistance-per-metre");
        assertEquals(percent, trial(BENCH + "rule-set=drop-only;allowance=1200 mV").value("highest-resistance-per-metre"), 1e-9);
        assertTrue(trial(BENCH + "rule-set=drop-only;allowance=10 %").finding("The drop with").source().document().key().equals("abyc-e-11"));
        assertTrue(trial(BENCH + "rule-set=drop-only;allowance=5 %").finding("The drop with").source().document().key().equals("computed"));
    }

    @Test
    void letsAResistanceFromMemoryDecideNothing() {
        Finding finding = trial("current=60 A;route-length=5 m;rule-set=drop-only").finding("The drop with");
        assertEquals(Standing.FROM_MEMORY, finding.source().standing());
        assertEquals(Verdict.NOT_KNOWN, finding.verdict());
        assertEquals(Verdict.PASSED, trial(BENCH + "rule-set=drop-only").finding("The drop with").verdict());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            rule-set=bs-7671-cord;fuse-rule=33-cfr-183            | fuse-rule: Rule for the highest rating 150 % belongs to Table 5 of 33 CFR: choose that rule set on ampacity, or at most the ampacity
            rule-set=33-cfr-183;conductor=nec-stranded;supply-voltage=50 V;fuse-rule=33-cfr-183 | fuse-rule: Rule for the highest rating 150 % holds below 50 V: choose at most the ampacity
            rule-set=drop-only;fuse-rating=15 A                   | fuse-rating: Rating of the fuse-link or breaker cannot be held against a conductor without ampacity: choose a rule set on ampacity
            rule-set=bs-7671-cord;fuse-rating=5 A                 | fuse-rating: Rating of the fuse-link or breaker is 5\u00a0A, below the design current of 8\u00a0A: choose the fuse-link first
            """)
    void refusesWhatContradictsItself(String entries, String refusal) {
        assertEquals(refusal, trial(BENCH + entries).refusal());
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            one-way-length       | highest-resistance-per-metre | 10.71 mΩ/m
            return-counted-twice | highest-resistance-per-metre | 2.679 mΩ/m
            feet-for-metres      | highest-resistance-per-metre | 17.58 mΩ/m
            one-way-length       | chosen-size                  | 2 mm²
            drop-left-out        | chosen-size                  | 1.5 mm²
            rounded-down         | chosen-size                  | 3 mm²
            AGREES               | chosen-size                  | 4 mm²
            """)
    void recognisesKnownSlips(String key, String asked, String answer) {
        assertEquals(key, trial(CORD).slipBehind(asked, answer));
    }

    private static ChoiceStep choice(Trial trial) {
        return (ChoiceStep) trial.working().steps().stream().filter(step -> step instanceof ChoiceStep).findFirst().orElseThrow();
    }

    private static String reason(ChoiceStep choice, String name) {
        return choice.candidates().stream().filter(one -> one.name().equals(name)).map(Candidate::reason).findFirst().orElseThrow();
    }
}
