package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Finding;
import loomwright.worked.TableStep;
import loomwright.worked.NextQuestion;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmpacityTest {
    private static final String BOAT_12_AWG = "size=12 AWG;insulation-temperature=t105;";

    private static Trial trial(String entries) {
        return Trial.asPrinted("ampacity", entries.split(";"));
    }

    @Test
    void multipliesByEveryFactorThatBinds() {
        // 45 A × 0.85 × 0.60 = 22.95 A
        Trial trial = trial(BOAT_12_AWG + "engine-space=yes;conductors-together=4");
        assertEquals(22.95, trial.value("ampacity"), 1e-9);
        assertEquals(0.6, trial.value("bundle-factor"), 1e-12);
    }

    /** 45 A × 0.60 = 27 A for four together, on the page of the fuse-link as well. */
    @Test
    void theWayToTheFuseLinkCarriesThePlaceAlong() {
        NextQuestion next = trial(BOAT_12_AWG + "conductors-together=4;design-current=5 A").working().nextQuestions().get(0);
        assertEquals("fuse-choice", next.calculatorKey());
        assertEquals(27, Trial.of("fuse-choice", next.carried()).value("ampacity"), 1e-9);
        assertFalse(Trial.of("ampacity", "size=12 AWG").working().nextQuestions().get(0).carried().containsKey("ambient"));
    }

    @Test
    void usesTheBundlingFactorAtAnyVoltageAndSaysWhereItIsCompulsory() {
        // 45 A × 0.50
        Trial trial = trial(BOAT_12_AWG + "conductors-together=7");
        assertEquals(22.5, trial.value("ampacity"), 1e-9);
        TableStep step = (TableStep) trial.working().steps().get(1);
        assertTrue(step.why().contains("compulsory from 50 V up only"), step.why());
        assertFalse(trial(BOAT_12_AWG + "conductors-together=2").answers("bundle-factor"));
    }

    @Test
    void opensWithTheCarefulCase() {
        // 60 °C insulation and 40 °C around it: 25 A × 0.82
        Trial trial = Trial.of("ampacity", "size=12 AWG", "design-current=10 A");
        assertEquals(20.5, trial.value("ampacity"), 1e-9);
        assertTrue(trial.finding("design current").words().startsWith("Assuming insulation for 60\u00a0°C and 40\u00a0°C around it: "));
    }

    @Test
    void saysWhatAConductorCarriesAtMostWhereNoTableGoesSoFar() {
        // 56 °C is warmer than the last factor, 0.41 of 25 A
        Trial trial = trial("size=12 AWG;ambient=56 °C;design-current=11 A");
        assertFalse(trial.answers("ampacity"));
        assertEquals(10.25, trial.value("at-most"), 1e-9);
        assertEquals(Verdict.STOP, trial.finding("design current").verdict());
        assertEquals(Verdict.NOT_KNOWN, trial("size=12 AWG;ambient=56 °C;design-current=9 A").finding("design current").verdict());
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
        // all of it: nothing left
        assertEquals(Verdict.CAUTION, within.finding("design current").verdict());
        assertEquals(Verdict.PASSED, trial(BOAT_12_AWG + "design-current=42 A").finding("design current").verdict());
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
            size=12 AWG;ambient=60 °C                                          | ambient: Temperature around the conductor is as high as its insulation may get, 60\u00a0°C, so it can carry nothing there: choose another way for it, or better insulation
            size=12 AWG;ambient=75 °C;insulation-temperature=t75;engine-space=yes | ambient: Temperature around the conductor is as high as its insulation may get, 75\u00a0°C, so it can carry nothing there: choose another way for it, or better insulation
            """)
    void refusesAPlaceAsWarmAsTheInsulation(String entries, String refusal) {
        assertEquals(refusal, trial(entries).refusal());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            conductors-added            | engine-space=yes                                             | 76.5 A
            warmth-turned-over          | engine-space=yes                                             | 52.94 A
            warmth-left-out             | engine-space=yes                                             | 45 A
            warmth-taken-away           | engine-space=yes                                             | 6.75 A
            column-of-better-insulation | engine-space=yes                                             | 46.75 A
            bundle-turned-over          | conductors-together=5                    | 75 A
            bundle-turned-over          | conductors-together=5;engine-space=yes   | 63.75 A
            warmth-turned-over          | conductors-together=5;engine-space=yes   | 31.76 A
            bundle-left-out             | conductors-together=5                    | 45 A
            rule-sets-mixed             | conductors-together=5                    | 36 A
            fuse-limit-for-ampacity     | engine-space=no                                              | 67.5 A
            AGREES                      | engine-space=no                                              | 45 A
            DIFFERS                     | engine-space=no                                              | 30 A
            """)
    void recognisesKnownSlips(String key, String entries, String answer) {
        assertEquals(key, trial(BOAT_12_AWG + entries).slipBehind("ampacity", answer));
    }
}
