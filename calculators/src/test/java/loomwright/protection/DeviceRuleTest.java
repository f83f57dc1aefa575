package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DeviceRuleTest {
    private static final Source TYPED = Source.of(Document.COMPUTED, "typed");
    private static final Source MEMORY = Source.of(Document.FROM_MEMORY, "");

    private static Quantity amperes(double amperes) {
        return Quantity.of(amperes, Units.AMPERE);
    }

    private static Finding guards(double rating, Guarded kind, double mayCarry, Source source) {
        return DeviceRule.of("Feed fuse", amperes(rating)).guards(kind, "panel P1", amperes(mayCarry), source).finding();
    }

    private static Finding conductor(double rating, double ampacity, RuleSet rule, boolean ownTable) {
        return DeviceRule.of("Feed fuse", amperes(rating)).guardsConductor("run Feed", amperes(ampacity), TYPED, rule, ownTable).finding();
    }

    @Test
    void aPanelOfTwentyAmperesBehindFortyIsAStopThatNamesBoth() {
        Finding finding = guards(40, Guarded.PANEL, 20, TYPED);
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("Feed fuse, 40\u00a0A, is above what panel P1 behind it may carry, 20\u00a0A.", finding.words());
        assertEquals(
                "Take a device of a smaller rating, put one of its own before panel P1, or take a panel for more.", finding.remedy());
    }

    @Test
    void aDeviceOfTheSameRatingGuardsIt() {
        assertEquals(Verdict.PASSED, guards(20, Guarded.PANEL, 20, TYPED).verdict());
    }

    @Test
    void whatIsFromMemoryStopsAndNeverPasses() {
        assertEquals(Verdict.STOP, guards(30, Guarded.OUTLET, 15, MEMORY).verdict());
        assertEquals(Verdict.NOT_KNOWN, guards(15, Guarded.OUTLET, 15, MEMORY).verdict());
    }

    // 33 CFR 183.455(c)(1): at most 150 % of the Table 5 current; 1.5 · 30 A = 45 A
    @Test
    void theShareOfThePetrolBoatRuleHoldsForItsOwnTableAlone() {
        Finding own = conductor(45, 30, RuleSet.US_33_CFR, true);
        assertEquals(Verdict.PASSED, own.verdict());
        assertEquals("Feed fuse, 45\u00a0A, is within 150\u00a0% of what run Feed behind it may carry, 45\u00a0A.", own.words());
        assertEquals(Verdict.STOP, conductor(46, 30, RuleSet.US_33_CFR, true).verdict());
        assertEquals(Verdict.STOP, conductor(45, 30, RuleSet.US_33_CFR, false).verdict());
        assertEquals(Verdict.STOP, conductor(45, 30, RuleSet.CONDUCTOR_AMPACITY, true).verdict());
        assertEquals(Verdict.PASSED, conductor(30, 30, RuleSet.US_33_CFR, false).verdict());
    }

    @Test
    void whatNobodyGaveIsAskedFor() {
        Finding finding = DeviceRule.of("Feed fuse", amperes(30)).unknown(Guarded.OUTLET, "outlet X1", "outlet-rating", TYPED);
        assertEquals(Verdict.NOT_KNOWN, finding.verdict());
        assertEquals("outlet-rating", finding.missing().key());
        assertEquals("Feed fuse, 30\u00a0A, guards outlet X1, and what that may carry is not given.", finding.words());
        assertEquals("Find the rated current of the outlet, or largest fuse-link for the device: the outlet, or the data sheet of the device: rated current, or \u201cmaximum fuse\u201d.", finding.remedy());
    }

    @Property
    void aSmallerDeviceIsNeverWorse(
            @ForAll @DoubleRange(min = 1, max = 200) double rating, @ForAll @DoubleRange(min = 0.1, max = 1) double part,
            @ForAll @DoubleRange(min = 1, max = 200) double mayCarry, @ForAll Guarded kind) {
        if (guards(rating, kind, mayCarry, TYPED).verdict() == Verdict.PASSED) {
            assertEquals(Verdict.PASSED, guards(rating * part, kind, mayCarry, TYPED).verdict());
        }
    }
}
