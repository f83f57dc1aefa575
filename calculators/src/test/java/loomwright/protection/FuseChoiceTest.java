package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Finding;
import loomwright.worked.Step;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FuseChoiceTest {
    @Test
    void takesTheSmallestRatingThatCarriesTheLoad() {
        // 16 AWG, 105 °C: 25 A; 150 %: 37.5 A; 2 A ÷ 0.8 = 2.5 A; the next rating is 3 A; 2 ÷ 3 = 66.7 %
        Trial trial = trial("design-current=2 A", "size=16 AWG", "fuse-rule=33-cfr-183");
        assertEquals(25, trial.value("ampacity"), 1e-12);
        assertEquals(37.5, trial.value("highest-rating"), 1e-12);
        assertEquals(2.5, trial.value("least-rating"), 1e-12);
        assertEquals(3, trial.value("chosen-rating"), 1e-12);
        assertEquals(66.67, trial.value("loading-percent"), 0.005);
    }

    @Test
    void asksForNoMoreThanTheLoadWhenItIsShort() {
        Trial trial = trial("design-current=7.5 A", "size=14 AWG", "continuous=no");
        assertEquals(7.5, trial.value("least-rating"), 1e-12);
        assertEquals(7.5, trial.value("chosen-rating"), 1e-12);
        assertEquals(100, trial.value("loading-percent"), 1e-9);
    }

    @Test
    void staysAtTheAmpacityUnlessARuleSetAllowsMore() {
        assertEquals(35, trial("design-current=2 A", "size=14 AWG", "fuse-rule=conductor-ampacity").value("highest-rating"), 1e-12);
        assertEquals(52.5, trial("design-current=2 A", "size=14 AWG", "fuse-rule=33-cfr-183").value("highest-rating"), 1e-12);
    }

    /** Who types a current and a size and nothing else gets the careful rule: 18 AWG stands in for 1 mm², 60 °C, 10 A. */
    @Test
    void twelveAmperesThroughOneSquareMillimetreIsAStop() {
        Trial trial = Trial.of("fuse-choice", "ambient=30 °C", "design-current=12 A", "size=1 mm²");
        assertEquals(10, trial.value("ampacity"), 1e-12);
        assertEquals(Verdict.STOP, trial.finding("The design current, 12\u00a0A, is above the ampacity of 1\u00a0mm², 10\u00a0A").verdict());
        assertFalse(trial.answers("chosen-rating"));
    }

    @ParameterizedTest(name = "{0} insulation in an engine space: {1} A")
    @CsvSource({
        // 12 AWG of Table 5 times the factor of note 1
        "t60, 14.5", "t75, 18.75", "t80, 27.3", "t90, 32.8", "t105, 38.25", "t125, 44.5", "t200, 55"
    })
    void multipliesByTheFactorOfTheEngineSpace(String insulation, double amperes) {
        Trial trial = Trial.of(
                "fuse-choice", "ambient=30 °C", "design-current=2 A", "size=12 AWG", "insulation-temperature=" + insulation, "engine-space=yes");
        assertEquals(amperes, trial.value("ampacity"), 1e-9);
    }

    @ParameterizedTest(name = "at {0}: least {1} A")
    @CsvSource({
        // 10 A ÷ 0.8 = 12.5 A; ÷ 34/40, ÷ 30/40, ÷ 25/40, ÷ 22/40
        "-40 °C, 12.5", "20 °C, 12.5", "20.1 °C, 14.706", "30 °C, 14.706", "65 °C, 14.706", "66 °C, 16.667", "85 °C, 16.667",
        "86 °C, 20", "110 °C, 20", "125 °C, 22.727", "149 °F, 14.706"
    })
    void takesTheNextHotterRowAndNeverReadsBetween(String ambient, double least) {
        assertEquals(least, trial("design-current=10 A", "size=10 AWG", "fuse-ambient=" + ambient).value("least-rating"), 0.0005);
    }

    @Test
    void saysWhenTheRowIsNotThatOfThePlace() {
        assertTrue(trial("design-current=10 A", "size=10 AWG", "fuse-ambient=30 °C").working().steps().stream()
                .anyMatch(step -> step.why().contains("no row for 30\u00a0°C, so the next hotter one is taken")));
        assertFalse(trial("design-current=10 A", "size=10 AWG", "fuse-ambient=65 °C").working().steps().stream()
                .anyMatch(step -> step.why().contains("no row for")));
    }

    @Test
    void refusesNothingElseWithinItsLimits() {
        assertTrue(trial("design-current=600 A", "size=18 AWG",
                "fuse-ambient=126 °C").refusal().startsWith("fuse-ambient: Temperature around the fuse-link"));
    }

    @Test
    void listsEveryRatingWithItsReason() {
        ChoiceStep step = ratings(trial("design-current=10 A", "size=14 AWG"));
        List<String> reasons = new ArrayList<>();
        step.candidates()
                .forEach(candidate -> reasons.add(candidate.name().replace('\u00a0', ' ') + " "
                        + candidate.reason().replace('\u00a0', ' ')));
        assertEquals(
                List.of(
                        "1 A below the 12.5 A that the load asks for", "2 A below the 12.5 A that the load asks for",
                        "3 A below the 12.5 A that the load asks for", "4 A below the 12.5 A that the load asks for",
                        "5 A below the 12.5 A that the load asks for", "7.5 A below the 12.5 A that the load asks for",
                        "10 A below the 12.5 A that the load asks for", "15 A the smallest that carries the load",
                        "20 A allowed, but larger than the load needs", "25 A allowed, but larger than the load needs",
                        "30 A allowed, but larger than the load needs", "35 A allowed, but larger than the load needs",
                        "40 A above the 35 A that the conductor allows"),
                reasons);
    }

    @Test
    void stopsWhenTheLoadAsksForMoreThanTheConductorAllows() {
        // 14 AWG, 75 °C: 20 A; 20 A ÷ 0.8 = 25 A
        Trial trial = Trial.of("fuse-choice", "ambient=30 °C", "design-current=20 A", "size=14 AWG", "insulation-temperature=t75");
        assertFalse(trial.answers("chosen-rating"));
        assertFalse(trial.answers("loading-percent"));
        Finding stop = trial.finding("The least rating that the load asks for");
        assertEquals(Verdict.STOP, stop.verdict());
        assertEquals("Take a thicker conductor. Never a larger fuse-link.", stop.remedy());
        assertNull(ratings(trial).result());
    }

    @Test
    void stopsWhenTheConductorIsTooThinForTheLoad() {
        // 150 % of 20 A would allow a 30 A fuse-link, and 24 A would fit under it: the conductor carries 20 A all the same
        Trial trial = Trial.of(
                "fuse-choice", "ambient=30 °C", "design-current=24 A", "continuous=no", "size=14 AWG", "insulation-temperature=t75", "fuse-rule=33-cfr-183");
        assertFalse(trial.answers("chosen-rating"));
        assertEquals(Verdict.STOP, trial.finding("The design current, 24\u00a0A, is above the ampacity of 14\u00a0AWG, 20\u00a0A").verdict());
    }

    @ParameterizedTest(name = "{0} A in {1}, {2}: {4}")
    @CsvSource({
        // 60 °C insulation: 8 AWG carries 55 A, in an engine space 55 × 0.58 = 31.9 A; 18 AWG carries 10 A
        "30.5, 8 AWG, blade, yes, Take a thicker conductor.",
        "45, 8 AWG, blade, no, Take a larger kind of fuse-link.",
        "2, 18 AWG, large-blade, no, Take a smaller kind of fuse-link."
    })
    void stopsAtAGapInTheStandardRatings(String amperes, String size, String type, String engineSpace, String remedy) {
        Trial trial = Trial.of(
                "fuse-choice", "ambient=30 °C", "design-current=" + amperes + " A", "continuous=no", "size=" + size, "fuse-type=" + type,
                "engine-space=" + engineSpace, "insulation-temperature=t60");
        Finding stop = trial.finding("No standard");
        assertEquals(Verdict.STOP, stop.verdict());
        assertEquals(remedy, stop.remedy());
        assertFalse(trial.answers("chosen-rating"));
    }

    @ParameterizedTest(name = "{0} {1}: {3} for {2} is {4}")
    @CsvSource({
        // 12 AWG: 105 °C 45 A, 125 °C 50 A, 90 °C 40 A; 10 AWG 60 A
        "size=12 AWG, continuous=yes, ampacity, 50 A, hotter-column",
        "size=12 AWG, continuous=yes, ampacity, 40 A, colder-column",
        "size=12 AWG, continuous=yes, ampacity, 60 A, thicker-row",
        // 45 ÷ 0.85 = 52.9; engine space left out 45; 50 × 0.85 = 42.5
        "size=12 AWG, engine-space=yes, ampacity, 52.9 A, warmth-turned-over",
        "size=12 AWG, engine-space=yes, ampacity, 45 A, warmth-left-out",
        "size=12 AWG, engine-space=yes, ampacity, 42.5 A, hotter-column",
        "size=12 AWG, fuse-rule=33-cfr-183, highest-rating, 45 A, ampacity-for-limit",
        "size=12 AWG, fuse-rule=33-cfr-183, highest-rating, 15 A, limit-of-the-load",
        "size=12 AWG, fuse-rule=conductor-ampacity, highest-rating, 67.5 A, rule-of-another-set",
        "size=12 AWG, engine-space=yes, highest-rating, 45 A, limit-without-factors",
        "size=12 AWG, continuous=yes, least-rating, 8 A, continuous-multiplied",
        "size=12 AWG, continuous=yes, least-rating, 10 A, continuous-left-out",
        "size=12 AWG, fuse-ambient=65 °C, least-rating, 12.5 A, re-rating-left-out",
        // 10 × 0.85 ÷ 0.8 = 10.625; 10 × 0.8 ÷ 0.85 = 9.412; 10 ÷ 0.85 = 11.765
        "size=12 AWG, fuse-ambient=65 °C, least-rating, 10.625 A, re-rating-multiplied",
        "size=12 AWG, fuse-ambient=65 °C, least-rating, 9.412 A, continuous-multiplied",
        "size=12 AWG, fuse-ambient=65 °C, least-rating, 11.765 A, continuous-left-out",
        "size=12 AWG, continuous=yes, chosen-rating, 10 A, device-only",
        "size=12 AWG, continuous=yes, chosen-rating, 40 A, largest-allowed",
        "size=12 AWG, continuous=yes, loading-percent, 150 %, loading-turned-over",
        "size=12 AWG, continuous=yes, loading-percent, 22.2 %, loading-of-conductor"
    })
    void knowsTheSlip(String first, String second, String asked, String answer, String slip) {
        assertEquals(slip, trial("design-current=10 A", first, second).slipBehind(asked, answer));
    }

    @Test
    void knowsTheFuseLinkChosenForTheDeviceAboveTheConductor() {
        Trial trial = Trial.of("fuse-choice", "ambient=30 °C", "design-current=20 A", "size=14 AWG", "insulation-temperature=t75");
        assertEquals("above-the-conductor", trial.slipBehind("chosen-rating", "25 A"));
        assertEquals("DIFFERS", trial.slipBehind("chosen-rating", "40 A"));
    }

    @ParameterizedTest(name = "{0} is carried as {1}")
    @CsvSource({"2.5 mm2, iso-6722-1", "16 AWG, nec-stranded", "13 AWG, copper-by-area", "5833 circular mil, copper-by-area",
            "95.5 mm2, copper-by-area"})
    void carriesCurrentAndConductorOn(String size, String kind) {
        var carried = trial("design-current=500 mA", "size=" + size).working().nextQuestions().get(0).carried();
        assertEquals(kind, carried.get("conductor"));
        assertEquals("0.5\u00a0A", carried.get("current"));
        assertTrue(Trial.of(
                        "voltage-drop", "current=1 A", "route-length=1 m", "conductor=" + kind, "size="
                                + carried.get("size")).value("drop") > 0);
    }

    private static Trial trial(String... entries) {
        List<String> all = new ArrayList<>(List.of("insulation-temperature=t105", "ambient=30 °C"));
        all.addAll(List.of(entries));
        return Trial.of("fuse-choice", all.toArray(new String[0]));
    }

    /** The step that chose a standard rating. */
    private static ChoiceStep ratings(Trial trial) {
        for (Step step : trial.working().steps()) {
            if (step instanceof ChoiceStep choice && step.words().contains("standard rating")) {
                return choice;
            }
        }
        throw new AssertionError("no rating was chosen");
    }
}
