package loomwright.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import loomwright.worked.FormulaStep;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

class PeukertTest {
    private static final double ROUNDED = 0.005;
    private static Trial rated() {
        return Trial.of("peukert", "capacity=100 Ah", "exponent=1.2", "load-current=10 A");
    }
    private static Trial oneAmpere() {
        return Trial.of("peukert", "capacity-is=one-ampere", "capacity=100 Ah", "exponent=1.2", "load-current=20 A");
    }

    @Test
    void givesTimeAndAmpereHours() {
        // 20 h × 0.5^1.2; × 10 A; half of it
        assertEquals(8.7055, rated().value("run-time"), ROUNDED);
        assertEquals(87.055, rated().value("delivered-charge"), ROUNDED);
        assertEquals(87.055, rated().value("delivered-share"), ROUNDED);
        assertEquals(4.3528, rated().value("planning-time"), ROUNDED);
        assertEquals(5, rated().value("rated-current"), 1e-9);
    }

    /** 20 × 5^1.2 = 20 × 6.8986. */
    @Test
    void findsTheCapacityThatTheOneAmpereFormNeeds() {
        assertEquals(137.97, rated().value("one-ampere-capacity"), ROUNDED);
        Trial back = Trial.of("peukert", "capacity-is=one-ampere", "capacity=137.9730 Ah", "exponent=1.2", "load-current=10 A");
        assertEquals(rated().value("run-time"), back.value("run-time"), 1e-5);
    }

    @Test
    void showsThatBothFormsAgreeOnTheirOwnCapacities() {
        FormulaStep agreeing = null;
        for (var step : rated().working().steps()) {
            agreeing = step.words().equals("Put that capacity into the 1 A form") ? (FormulaStep) step : agreeing;
        }
        assertEquals(rated().value("run-time"), agreeing.result().value(), 1e-9);
    }

    @Test
    void takesACapacityAtOneAmpere() {
        // 100 ÷ 20^1.2 = 100 ÷ 36.411; 20 h × 0.25^1.2
        assertEquals(2.7464, oneAmpere().value("run-time"), ROUNDED);
        assertEquals(3.7893, oneAmpere().value("other-form-time"), ROUNDED);
        assertEquals(54.93, oneAmpere().value("delivered-charge"), ROUNDED);
        assertEquals(54.93, oneAmpere().value("delivered-share"), ROUNDED);
        assertEquals(100, oneAmpere().value("one-ampere-capacity"), 1e-9);
        assertFalse(oneAmpere().answers("rated-current"));
    }

    /** The example prints 2.6 h at 20 A, which its own formula does not give. */
    @Test
    void doesNotAgreeWithTheMisprint() {
        assertTrue(oneAmpere().away("run-time", "2.6 h") > 0.05);
    }

    @Test
    void recognisesEverySlip() {
        // 100 ÷ 10^1.2; 100 ÷ 10; 20 × 2^1.2; 20 × 0.5 × 1.2; the whole time
        assertEquals("rating-in-the-one-ampere-form", rated().slipBehind("run-time", "6.31 h"));
        assertEquals("exponent-left-out", rated().slipBehind("run-time", "10 h"));
        assertEquals("ratio-turned-over", rated().slipBehind("run-time", "45.95 h"));
        assertEquals("multiplied-by-the-exponent", rated().slipBehind("run-time", "12 h"));
        assertEquals("depth-left-out", rated().slipBehind("planning-time", "8.71 h"));
        assertEquals("rated-form-for-one-ampere-capacity", oneAmpere().slipBehind("run-time", "3.79 h"));
        assertEquals("exponent-left-out", oneAmpere().slipBehind("run-time", "5 h"));
        assertEquals("divided-by-the-exponent", oneAmpere().slipBehind("run-time", "4.167 h"));
    }

    @Test
    void doubtsAnExponentOutsidePrint() {
        assertEquals(Verdict.PASSED, withExponent("1.1").finding("The exponent").verdict());
        assertEquals(Verdict.PASSED, withExponent("1.3").finding("The exponent").verdict());
        assertEquals(1.1, withExponent("1.05").finding("is below the least usual").limit().value(), 1e-9);
        assertEquals(1.3, withExponent("1.35").finding("is above the greatest usual").limit().value(), 1e-9);
        assertEquals(Verdict.CAUTION, withExponent("1.05").finding("The exponent").verdict());
    }

    @Test
    void doubtsMoreThanThePrintedCapacity() {
        Trial slow = Trial.of("peukert", "capacity=100 Ah", "exponent=1.2", "load-current=1 A");
        assertEquals(Verdict.CAUTION, slow.finding("more than the printed capacity").verdict());
        assertFalse(rated().hasFinding("more than the printed capacity"));
        assertFalse(Trial.of("peukert", "capacity=100 Ah", "exponent=1.2", "load-current=5 A").hasFinding("more than the printed"));
    }

    @Test
    void refusesWhatBecomesTooLargeToShow() {
        assertTrue(Trial.of("peukert", "capacity=10000 Ah", "exponent=2", "load-current=0.001 A", "rated-time=0.5 h")
                .refusal()
                .contains("has no value we can show"));
    }

    @Test
    void carriesWhatWasDelivered() {
        assertEquals(Map.of("deficit", "87.06\u00a0Ah", "chemistry", "lead-acid"), rated().working().nextQuestions().get(0).carried());
    }

    private static Trial withExponent(String exponent) {
        return Trial.of("peukert", "capacity=100 Ah", "exponent=" + exponent, "load-current=10 A");
    }
}
