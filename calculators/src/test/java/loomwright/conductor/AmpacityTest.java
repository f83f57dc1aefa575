package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmpacityTest {
    private static final String BOAT_12_AWG = "size=12 AWG;insulation-temperature=t105;";

    private static Trial trial(String entries) {
        return Trial.of("ampacity", entries.split(";"));
    }

    @Test
    void multipliesByEveryFactorThatBinds() {
        // 45 A × 0.85 × 0.60 = 22.95 A
        Trial trial = trial(BOAT_12_AWG + "engine-space=yes;conductors-together=4;system-voltage=120 V");
        assertEquals(22.95, trial.value("ampacity"), 1e-9);
        assertEquals(0.6, trial.value("bundle-factor"), 1e-12);
        assertTrue(trial.hasFinding("is compulsory from 50 V up and has been used"));
    }

    @Test
    void saysThatBundlingIsNotCompulsoryBelowFiftyVolts() {
        Finding finding = trial(BOAT_12_AWG + "conductors-together=7").finding("compulsory only from 50 V up");
        assertEquals(Verdict.CAUTION, finding.verdict());
        assertEquals("183.435(b)", finding.source().locus());
        assertTrue(finding.words().contains("22.5\u00a0A instead of 45\u00a0A"), finding.words());
        assertFalse(trial(BOAT_12_AWG + "conductors-together=2").hasFinding("50 V up"));
        assertFalse(trial(BOAT_12_AWG + "conductors-together=7;system-voltage=49.9 V").hasFinding("has been used"));
        assertTrue(trial(BOAT_12_AWG + "conductors-together=7;system-voltage=50 V").hasFinding("has been used"));
    }

    @Test
    void countsABrokenNumberOfConductorsUp() {
        assertEquals(0.6, trial(BOAT_12_AWG + "conductors-together=3.5").value("bundle-factor"), 1e-12);
    }

    @Test
    void takesTheWarmerRowBetweenTwo() {
        // 37 °C lies between 35 °C (0.91) and 40 °C (0.82)
        assertEquals(0.82, trial("rule-set=bs-7671-cord;size=2.5 mm²;ambient=37 °C").value("warmth-factor"), 1e-12);
        assertEquals(0.91, trial("rule-set=bs-7671-cord;size=2.5 mm²;ambient=31 °C").value("warmth-factor"), 1e-12);
        assertEquals(0.82, trial("rule-set=nec-free-air;size=12 AWG;ambient=95.1 °F").value("warmth-factor"), 1e-12);
    }

    @Test
    void usesNoFactorAtTheTemperatureOfTheTable() {
        assertFalse(trial("rule-set=bs-7671-cord;size=2.5 mm²;ambient=30 °C").answers("warmth-factor"));
        assertEquals(13, trial("rule-set=faa-11-9;size=12 AWG;insulation-temperature=t105;ambient=70 °C").value("ampacity"), 1e-12);
        assertEquals(45, trial(BOAT_12_AWG + "ambient=30 °C").value("ampacity"), 1e-12);
        assertEquals(38.25, trial(BOAT_12_AWG + "ambient=50 °C;engine-space=yes").value("ampacity"), 1e-12);
    }

    @Test
    void holdsTheDesignCurrentAgainstTheAmpacity() {
        Trial within = trial(BOAT_12_AWG + "design-current=45 A");
        assertEquals(Verdict.PASSED, within.finding("design current").verdict());
        assertEquals(100, within.value("loading-percent"), 1e-9);
        Finding above = trial(BOAT_12_AWG + "design-current=45100 mA").finding("design current");
        assertEquals(Verdict.STOP, above.verdict());
        assertEquals(45, above.limit().value(), 1e-12);
        assertTrue(above.source().locus().contains("Table 5"));
        assertFalse(trial(BOAT_12_AWG).answers("loading-percent"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"rule-set=faa-11-9;insulation-temperature=t105", "rule-set=nec-free-air;insulation-temperature=t90", "rule-set=33-cfr-183"})
    void namesTheConditionsOfEachTable(String rules) {
        Finding finding = trial(rules + ";size=12 AWG").finding("holds under the conditions of its table");
        assertEquals(Verdict.CAUTION, finding.verdict());
        assertTrue(finding.words().contains("°C"), finding.words());
    }

    @Test
    void warnsThatFreeAirMeansASingleConductor() {
        String freeAir = "rule-set=nec-free-air;size=12 AWG;insulation-temperature=t60;conductors-together=";
        assertTrue(trial(freeAir + "2").hasFinding("side by side"));
        assertFalse(trial(freeAir + "1").hasFinding("side by side"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            size=0.5 mm²                                                       | size: Size of conductor is 0.5\u00a0mm², with too little copper for Table 5, which begins at 18\u00a0AWG (0.823\u00a0mm²): take a thicker conductor, or the ampacity from its maker's data
            rule-set=nec-free-air;size=2.5 mm²                                 | size: Size 2.5\u00a0mm² is not in this table, which lists AWG. Choose 14\u00a0AWG (thinner) or 12\u00a0AWG (thicker), or another rule set
            rule-set=towing-cable;size=6 mm²                                   | size: Size 6\u00a0mm² is not in this table, which lists vehicle cable of 0.30 mm strands. Choose 3\u00a0mm², or another rule set
            rule-set=bs-7671-cord;size=14 AWG                                  | size: Size 14\u00a0AWG (2.08\u00a0mm²) is not in this table, which lists the sizes of flexible cords. Choose 1.5\u00a0mm² (thinner) or 2.5\u00a0mm² (thicker), or another rule set
            size=12 AWG;insulation-temperature=t150                            | insulation-temperature: Temperature rating of the insulation 150\u00a0°C has no column here (Boat: 33 CFR 183.425 Table 5): take a column below your rating, or choose another rule set
            rule-set=nec-free-air;size=18 AWG;insulation-temperature=t75       | insulation-temperature: Temperature rating of the insulation 75\u00a0°C has no figure for 18\u00a0AWG in this table: choose another rating or another size
            size=12 AWG;ambient=40 °C                                          | ambient: Temperature around the conductor is 40\u00a0°C, but 33 CFR has one factor only, for an engine space of 50 °C: choose yes at Engine space, or choose another rule set
            size=12 AWG;ambient=60 °C;engine-space=yes                         | ambient: Temperature around the conductor is 60\u00a0°C, but 33 CFR knows 30 °C and, in an engine space, 50 °C: keep the conductor out of there, or choose another rule set
            rule-set=faa-11-9;size=12 AWG;insulation-temperature=t105;ambient=71 °C | ambient: Temperature around the conductor is 71\u00a0°C, but FAA Table 11-9 holds up to 70 °C: keep the conductor out of there, or choose another rule set
            rule-set=nec-free-air;size=12 AWG;ambient=56 °C                    | ambient: Temperature around the conductor is 56\u00a0°C, but the factors of this rule set end at 55\u00a0°C: take better insulation, or choose another rule set
            rule-set=bs-7671-cord;size=1.5 mm²;insulation-temperature=t90;ambient=71 °C | ambient: Temperature around the conductor is 71\u00a0°C, but the factors of this rule set end at 70\u00a0°C: take better insulation, or choose another rule set
            rule-set=towing-cable;size=1 mm²;ambient=31 °C                     | ambient: Temperature around the conductor is 31\u00a0°C, but this page gives no factor for warm surroundings: leave the field empty, or choose another rule set
            rule-set=nec-free-air;size=12 AWG;engine-space=yes                 | engine-space: Engine space is a factor of 33 CFR only: choose no and enter the temperature around the conductor, or choose another rule set
            rule-set=nec-free-air;size=12 AWG;conductors-together=4            | conductors-together: Conductors together are 4, but the free-air table is for a single conductor, and the NEC factors for many are for raceways: enter fewer, or choose another rule set
            rule-set=bs-7671-cord;size=1.5 mm²;conductors-together=3           | conductors-together: Conductors together are 3, but this table has no factor for more than the two conductors of one circuit: enter fewer, or choose another rule set
            rule-set=faa-11-9;size=8 AWG;insulation-temperature=t105;conductors-together=10 | conductors-together: Conductors together must be at most 9 for 8 AWG and larger in FAA Table 11-9: choose another rule set
            """)
    void refusesWhatTheRuleSetDoesNotCover(String entries, String refusal) {
        assertEquals(refusal, trial(entries).refusal());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            conductors-added            | engine-space=yes                                             | 76.5 A
            warmth-turned-over          | engine-space=yes                                             | 52.94 A
            warmth-left-out             | engine-space=yes                                             | 45 A
            warmth-taken-away           | engine-space=yes                                             | 6.75 A
            column-of-better-insulation | engine-space=yes                                             | 46.75 A
            bundle-turned-over          | conductors-together=5;system-voltage=60 V                    | 75 A
            bundle-turned-over          | conductors-together=5;system-voltage=60 V;engine-space=yes   | 63.75 A
            warmth-turned-over          | conductors-together=5;system-voltage=60 V;engine-space=yes   | 31.76 A
            bundle-left-out             | conductors-together=5;system-voltage=60 V                    | 45 A
            bundle-not-compulsory       | conductors-together=5                                        | 27 A
            rule-sets-mixed             | conductors-together=5;system-voltage=60 V                    | 36 A
            fuse-limit-for-ampacity     | engine-space=no                                              | 67.5 A
            AGREES                      | engine-space=no                                              | 45 A
            DIFFERS                     | engine-space=no                                              | 30 A
            """)
    void recognisesKnownSlips(String key, String entries, String answer) {
        assertEquals(key, trial(BOAT_12_AWG + entries).slipBehind("ampacity", answer));
    }
}
