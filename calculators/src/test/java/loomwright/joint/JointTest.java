package loomwright.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Slips;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JointTest {
    private static Trial heat(String reading) {
        return Trial.of("joint-heat", "reading=" + reading, "test-current=5 A", "resistance-per-metre=7.6 mΩ/m", "design-current=10 A");
    }

    /** 5 A × 7.60 mΩ/m × 76.2 mm = 2.8956 mV, by hand. */
    @Test
    void takesAwayTheConductorBetweenTheProbes() {
        Trial trial = heat("12.8956 mV");
        assertTrue(trial.away("conductor-drop", "2.8956 mV") < 1e-9);
        assertTrue(trial.away("joint-resistance", "2 mΩ") < 1e-9);
        assertTrue(trial.away("joint-drop", "20 mV") < 1e-9);
        assertTrue(trial.away("joint-heat", "0.2 W") < 1e-9);
    }

    @Test
    void passesAJointThatDropsNoMoreThanTheConductorBesideIt() {
        assertEquals(Verdict.PASSED, heat("5 mV").finding("What the joint drops").verdict());
        assertEquals(Verdict.CAUTION, heat("6 mV").finding("What the joint drops").verdict());
    }

    @Test
    void saysWhenTheReadingCannotBe() {
        assertTrue(heat("1 mV").hasFinding("less than the conductor alone must drop"));
        assertTrue(heat("1 mV").working().nextQuestions().isEmpty());
        assertFalse(heat("12 mV").working().nextQuestions().isEmpty());
    }

    @Test
    void aTestPieceHoldsOrDoesNot() {
        assertEquals(
                Verdict.PASSED, Trial.of("pull-force", "rule-set=abyc", "size=14 AWG", "pulled=30 lbf").finding("The pull that the test piece held").verdict());
        assertEquals(Verdict.STOP, Trial.of("pull-force", "rule-set=abyc", "size=14 AWG", "pulled=130 N").finding("The pull that the test piece held").verdict());
        assertFalse(Trial.of("pull-force", "rule-set=abyc", "size=14 AWG").hasFinding("The pull that the test piece held"));
        assertEquals(2, Trial.of("pull-force", "rule-set=abyc", "size=14 AWG", "pulled=266.8 N").value("held-ratio"), 1e-9);
    }

    /** 300 lb is 1334 N, not the 1235 N printed beside it. */
    @Test
    void noJointPassesByAMisprint() {
        Trial trial = Trial.of("pull-force", "rule-set=ul-486a", "size=2/0 AWG", "pulled=1300 N");
        assertEquals(Verdict.CAUTION, trial.finding("For 2/0").verdict());
        assertEquals(Verdict.STOP, trial.finding("The pull that the test piece held").verdict());
        assertFalse(Trial.of("pull-force", "rule-set=ul-486a", "size=1/0 AWG").hasFinding("For 1/0"));
    }

    /** Printed for 14 AWG: 311.5 N in the military column, 222.5 N in UL 486A, 133.4 N in ABYC E-11. */
    @Test
    void opensWithTheRuleSetThatAsksForMost() {
        assertEquals(311.5, Trial.of("pull-force", "size=14 AWG").value("least-pull"), 1e-9);
    }

    @Test
    void aFigureFromMemoryMayStopAndNeverPass() {
        Trial trial = Trial.of("pull-force", "rule-set=iec-60352-2", "size=2.5 mm2", "pulled=10 N");
        assertEquals(Verdict.STOP, trial.finding("The pull that the test piece held").verdict());
        assertEquals(Verdict.NOT_KNOWN, trial.finding("from memory").verdict());
        Trial strong = Trial.of("pull-force", "rule-set=iec-60352-2", "size=2.5 mm2", "pulled=300 N");
        assertEquals(Verdict.NOT_KNOWN, strong.finding("The pull that the test piece held").verdict());
        assertEquals(230, trial.value("least-pull"));
    }

    @Test
    void namesTheSizesARuleSetHas() {
        assertEquals(
                "size: Size of conductor 13\u00a0AWG is not in this rule set's list. It has 18\u00a0AWG, 16\u00a0AWG, 14\u00a0AWG, 12\u00a0AWG, "
                        + "10\u00a0AWG, 3\u00a0AWG, 2\u00a0AWG, 1\u00a0AWG. Choose one of these, or another rule set",
                Trial.of("pull-force", "rule-set=abyc", "size=13 AWG").refusal());
        assertTrue(Trial.of("pull-force", "rule-set=abyc", "size=2.5 mm2").refusal().startsWith("size: Size of conductor 2.5\u00a0mm² is not in"));
    }

    @Test
    void aTubeMustSlipOverAndThenGrip() {
        Trial right = Trial.of("shrink-size", "supplied=9 mm", "joint-diameter=7 mm", "cable-diameter=5 mm");
        assertEquals(Verdict.PASSED, right.finding("The tube as supplied").verdict());
        assertEquals(Verdict.PASSED, right.finding("the cable that it has to grip").verdict());
        Trial narrow = Trial.of("shrink-size", "supplied=6 mm", "joint-diameter=7 mm", "cable-diameter=5 mm");
        assertEquals(Verdict.STOP, narrow.finding("The tube as supplied").verdict());
        Trial wide = Trial.of("shrink-size", "supplied=12 mm", "joint-diameter=7 mm", "cable-diameter=5 mm");
        assertEquals(Verdict.STOP, wide.finding("the cable that it has to grip").verdict());
        Trial threeToOne = Trial.of("shrink-size", "supplied=12 mm", "joint-diameter=7 mm", "cable-diameter=5 mm", "ratio=3:1");
        assertEquals(Verdict.PASSED, threeToOne.finding("the cable that it has to grip").verdict());
    }

    /** 30 mm ÷ 0.85 = 35.29 mm, by hand. */
    @Test
    void theTubeIsCutLongerThanItMustCover() {
        Trial trial = Trial.of("shrink-size", "supplied=9 mm", "joint-diameter=7 mm", "cable-diameter=5 mm", "cover-length=30 mm");
        assertTrue(trial.away("cut-length", "35.29 mm") <= 0.005);
        assertTrue(trial.away("largest-supplied", "10 mm") <= 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "joint-heat, reading=12 mV;test-current=5 A;resistance-per-metre=7.6 mΩ/m;design-current=11 A",
        "pull-force, size=14 AWG;pulled=200 N",
        "shrink-size, supplied=9 mm;joint-diameter=7 mm;cable-diameter=5 mm;ratio=3:1"
    })
    void everySlipIsRecognised(String calculator, String entries) {
        Slips.assertEachIsRecognised(Trial.of(calculator, entries.split(";")));
    }

    /** 30 mΩ at 16.8 A: 16.8² × 0.030 = 8.47 W. 0.495 W is the heat of the sound contact itself. */
    @ParameterizedTest(name = "{0} mΩ at {1} A: {2} W, {3}")
    @CsvSource({"30, 16.8, 8.467, STOP", "0.55, 30, 0.495, PASSED", "2, 16, 0.512, CAUTION", "2, 18.8, 0.70688, CAUTION", "2, 18.9, 0.71442, STOP", "1, 10, 0.1, PASSED"})
    void aJointThatBurnsIsAStop(double milliohms, double amperes, double watts, Verdict verdict) {
        Quantity heat = JointRule.heat(Quantity.of(milliohms, Units.MILLIOHM), Quantity.of(amperes, Units.AMPERE));
        assertEquals(watts, heat.value(), 0.0005);
        assertEquals(verdict, JointRule.heat("The heat in the joint", heat).finding().verdict());
    }
}
