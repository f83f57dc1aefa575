package loomwright.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.Finding;
import loomwright.worked.NextQuestion;
import loomwright.worked.Slips;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutletLoadTest {
    private static final String[] LIGHTER = {
        "kind=lighter", "current=9 A", "rating=15 A", "hours=4 h", "standing-current=12 mA", "contact-resistance=8 mΩ", "fuse-rating=10 A"
    };

    @Test
    void takesTheCurrentOfIso4165IfNoRatingIsEntered() {
        Trial trial = Trial.of("outlet-load", "current=6 A", "kind=iso-4165");
        assertEquals(50, trial.value("loading-percent"), 1e-9);
        assertEquals("iso-4165", trial.finding("continuous rating").source().document().key());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"lighter", "usb", "other"})
    void refusesToGuessTheRatingOfAnotherKind(String kind) {
        assertEquals(
                "rating: Continuous rating of the outlet is empty, and this kind has none in print: read it off the part or its sheet",
                Trial.of("outlet-load", "current=6 A", "kind=" + kind).refusal());
    }

    @Test
    void refusesMoreHoursOfUseThanTheOutletIsLive() {
        assertEquals(
                "hours: Time in use in a day is longer than the 2\u00a0h the outlet is live: make one of the two fit",
                Trial.of("outlet-load", "current=6 A", "hours=3 h", "live-hours=2 h").refusal());
    }

    @Test
    void anOutletMayBeInUseAsLongAsItIsLive() {
        assertEquals(12, Trial.of("outlet-load", "current=6 A", "hours=2 h", "live-hours=2 h").value("use-charge"), 1e-9);
        assertTrue(Trial.of("outlet-load", "current=6 A", "hours=2.0001 h", "live-hours=2 h").refusal().startsWith("hours: Time in use"));
    }

    @Test
    void saysNothingOfWhatWasNotEntered() {
        Trial trial = Trial.of("outlet-load", "current=6 A");
        assertFalse(trial.answers("contact-heat"));
        assertFalse(trial.answers("standing-charge"));
        assertFalse(trial.hasFinding("The drop of the contacts"));
        assertFalse(trial.hasFinding("With nothing plugged in"));
        assertFalse(trial.hasFinding("fuse-link"));
    }

    @Test
    void countsTheStandingDrawAsLongAsTheOutletIsLive() {
        assertEquals(0.288, Trial.of("outlet-load", LIGHTER).value("standing-charge"), 1e-9);
        assertEquals(0.096, Trial.of("outlet-load", with("live-hours=8 h")).value("standing-charge"), 1e-9);
        assertEquals(36, Trial.of("outlet-load", LIGHTER).value("use-charge"), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"11 A, PASSED", "12 A, CAUTION", "12.1 A, STOP"})
    void stopsAboveTheRating(String current, Verdict verdict) {
        assertEquals(verdict, Trial.of("outlet-load", "current=" + current).finding("continuous rating").verdict());
    }

    @Test
    void doubtsARatingAboveIso4165() {
        Finding finding = Trial.of("outlet-load", "current=6 A", "rating=16 A").finding("of ISO 4165 as described");
        assertEquals(Verdict.CAUTION, finding.verdict());
        assertFalse(Trial.of("outlet-load", "current=6 A", "rating=10 A").hasFinding("of ISO 4165 as described"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"9 A, PASSED", "10 A, CAUTION", "10.1 A, CAUTION"})
    void holdsTheLighterTypeAgainstTheLighter(String current, Verdict verdict) {
        assertEquals(verdict, Trial.of("outlet-load", with("current=" + current)).finding("this type was made for").verdict());
    }

    @Test
    void cautionsWhereTheOutletMayBeAskedForMoreThanItsRating() {
        Finding finding = Trial.of("outlet-load", "current=2 A", "kind=lighter", "rating=5 A").finding("may be asked for");
        assertEquals(Verdict.CAUTION, finding.verdict());
        assertEquals("common-practice", finding.source().document().key());
        assertEquals(Verdict.PASSED, Trial.of("outlet-load", LIGHTER).finding("may be asked for").verdict());
        assertFalse(Trial.of("outlet-load", "current=2 A", "kind=usb", "rating=5 A").hasFinding("may be asked for"));
    }

    @Test
    void stopsWhereTheFuseLinkLetsTheOutletBeOverloaded() {
        assertEquals(Verdict.STOP, Trial.of("outlet-load", with("fuse-rating=20 A")).finding("what the outlet behind it may carry").verdict());
        assertEquals(Verdict.PASSED, Trial.of("outlet-load", with("fuse-rating=15 A")).finding("what the outlet behind it may carry").verdict());
    }

    /** 80 % of 10 A is 8 A, from three hours on. */
    @Test
    void holdsTheFuseLinkToItsShareOnlyForHours() {
        assertEquals(Verdict.CAUTION, Trial.of("outlet-load", with("hours=3 h")).finding("for 3 h or more").verdict());
        assertEquals(Verdict.PASSED, Trial.of("outlet-load", with("current=8 A")).finding("for 3 h or more").verdict());
        assertFalse(Trial.of("outlet-load", with("hours=2.9 h")).hasFinding("for 3 h or more"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"38 mΩ, PASSED", "40 mΩ, CAUTION", "41 mΩ, CAUTION"})
    void holdsTheContactsAgainstTheAllowanceOfTheWholeCircuit(String contacts, Verdict verdict) {
        assertEquals(verdict, Trial.of("outlet-load", with("contact-resistance=" + contacts)).finding("The drop of the contacts").verdict());
    }

    /** 9 A × 9 A × 8 mΩ ÷ 2 = 0.324 W in each; × 14 mΩ ÷ 2 = 0.567 W; × 18 mΩ ÷ 2 = 0.729 W. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"8 mΩ, PASSED", "14 mΩ, CAUTION", "18 mΩ, STOP"})
    void holdsTheHeatOfEachContactAgainstThatOfAJoint(String contacts, Verdict verdict) {
        assertEquals(verdict, Trial.of("outlet-load", with("contact-resistance=" + contacts)).finding("The heat in each").verdict());
    }

    @Property(tries = 100)
    void twiceTheCurrentIsFourTimesTheHeat(@ForAll @DoubleRange(min = 0.1, max = 30) double amperes) {
        double once = heat(amperes);
        assertEquals(4 * once, heat(2 * amperes), 1e-6 * once);
    }

    private static double heat(double amperes) {
        return Trial.of("outlet-load", "rating=60 A", "contact-resistance=8 mΩ", "current=" + amperes + " A").value("contact-heat");
    }

    @Test
    void knowsTheMistakesOthersMade() {
        Trial trial = Trial.of("outlet-load", LIGHTER);
        Slips.assertEachIsRecognised(trial);
        assertEquals("fuse-for-rating", trial.slipBehind("loading-percent", "90 %"));
        assertEquals("square-forgotten", trial.slipBehind("contact-heat", "0.072 W"));
        assertEquals("milliohms-as-ohms", trial.slipBehind("contact-heat", "648 W"));
        assertEquals("only-while-in-use", trial.slipBehind("standing-charge", "0.048 Ah"));
    }

    @Test
    void carriesTheCurrentToTheFuse() {
        NextQuestion next = Trial.of("outlet-load", LIGHTER).working().nextQuestions().get(0);
        assertEquals("fuse-choice", next.calculatorKey());
        assertEquals("9\u00a0A", next.carried().get("design-current"));
    }

    @Test
    void neverSaysSafe() {
        for (Finding finding : Trial.of("outlet-load", LIGHTER).working().findings()) {
            assertFalse(finding.words().contains("safe"), finding::words);
            assertEquals(finding.verdict() == Verdict.PASSED, finding.remedy().isEmpty(), finding::words);
        }
        assertTrue(Trial.of("outlet-load", LIGHTER).working().findings().size() >= 6);
    }

    /** The entries of the lighter-type outlet, with one of them changed or added. */
    private static String[] with(String entry) {
        List<String> entries = new ArrayList<>(List.of(LIGHTER));
        entries.removeIf(other -> other.startsWith(entry.substring(0, entry.indexOf('=') + 1)));
        entries.add(entry);
        return entries.toArray(new String[0]);
    }

    /** The rating of ISO 4165 stands in where none was entered, and is said; 20 A is above it, 10 A below. */
    @Test
    void theRatingIsHeldAgainstWhatItsKindIsMadeFor() {
        Finding assumed = Trial.of("outlet-load", "current=6 A", "kind=iso-4165").finding("continuous rating of ISO 4165");
        assertTrue(assumed.words().startsWith("Assuming a rating that nobody entered"), assumed.words());
        Trial entered = Trial.of("outlet-load", "current=6 A", "kind=iso-4165", "rating=20 A");
        assertFalse(entered.finding("the continuous rating entered").words().contains("Assuming"));
        assertEquals(Verdict.CAUTION, entered.finding("the current of ISO 4165").verdict());
        assertFalse(Trial.of("outlet-load", "current=6 A", "kind=iso-4165", "rating=10 A").hasFinding("the current of ISO 4165"), "below the standard nothing is to be said");
    }

    /** Common practice: 10 A. A USB outlet is asked for what its ports give, so it is not held against that. */
    @Test
    void anOutletIsAskedForTenAmperesWhateverIsPluggedInToday() {
        assertEquals(Verdict.CAUTION, Trial.of("outlet-load", "current=2 A", "kind=other", "rating=5 A").finding("may be asked for").verdict());
        assertFalse(Trial.of("outlet-load", "current=2 A", "kind=usb", "rating=5 A").hasFinding("may be asked for"));
    }

    /** 80 % of 10 A for three hours and more: 8 A pass, 8.1 A do not, and 2.9 hours are no matter. */
    @Test
    void forThreeHoursAFuseLinkHoldsEightyPercent() {
        String[] three = {"kind=other", "rating=15 A", "fuse-rating=10 A", "hours=3 h"};
        assertEquals(Verdict.PASSED, Trial.of("outlet-load", "current=8 A", three[0], three[1], three[2], three[3]).finding("for 3 h or more").verdict());
        assertEquals(Verdict.CAUTION, Trial.of("outlet-load", "current=8.1 A", three[0], three[1], three[2], three[3]).finding("for 3 h or more").verdict());
        assertFalse(Trial.of("outlet-load", "current=8.1 A", three[0], three[1], three[2], "hours=2.9 h").hasFinding("for 3 h or more"));
    }

    /** 12 mA · 24 h = 0.288 Ah. */
    @Test
    void whatIsTakenWithNothingPluggedInIsSaid() {
        Finding standing = Trial.of("outlet-load", LIGHTER).finding("With nothing plugged in");
        assertEquals(Verdict.CAUTION, standing.verdict());
        assertTrue(standing.words().contains("0.288\u00a0Ah a day"), standing.words());
    }
}
