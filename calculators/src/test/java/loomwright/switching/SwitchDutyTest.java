package loomwright.switching;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SwitchDutyTest {
    private static final Source TYPED = Source.of(Document.COMPUTED, "typed");

    private static Finding check(Double rating, double amperes, SwitchedLoad load, double volts) {
        Quantity rated = rating == null ? null : Quantity.of(rating, Units.AMPERE);
        return SwitchDuty.check(
                "switch S1", rated, TYPED, Quantity.of(amperes, Units.AMPERE), load, Quantity.of(volts, Units.VOLT), "switch-rating");
    }

    /** FAA AC 43.13-1B Table 11-4: rating wanted = continuous current × factor, for 2 A: exact. */
    @ParameterizedTest(name = "{0} at {1} V: {2} A")
    @CsvSource({
        "LAMP, 14.6, 10", "MOTOR, 14.6, 4", "INDUCTIVE, 14.6, 4", "RESISTIVE, 14.6, 2", "LAMP, 29.2, 16", "MOTOR, 29.2, 6", "INDUCTIVE, 29.2, 8",
        "RESISTIVE, 29.2, 4",
    })
    void asksForWhatThePrintedTableAsks(SwitchedLoad load, double volts, double wanted) {
        Finding finding = check(wanted, 2, load, volts);
        assertEquals(Verdict.PASSED, finding.verdict());
        assertEquals(wanted, finding.limit().value(), 1e-12);
        assertEquals(Verdict.STOP, check(wanted - 0.1, 2, load, volts).verdict());
    }

    @Test
    void stopsASmallSwitchForAPump() {
        Finding finding = check(5.0, 4.5, SwitchedLoad.MOTOR, 14.6);
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("The rating of switch S1, 5\u00a0A, is below 2 times the current, as the table asks for motor, 9\u00a0A.", finding.words());
    }

    @Test
    void asksForARatingThatNobodyGave() {
        assertEquals("switch-rating", check(null, 4.5, SwitchedLoad.MOTOR, 14.6).missing().key());
    }

    @Test
    void knowsNoFactorForCapacitors() {
        assertEquals(Verdict.NOT_KNOWN, check(50.0, 4.5, SwitchedLoad.CAPACITIVE, 14.6).verdict());
    }

    @Test
    void takesWhatIsNotSaidAsTheHardest() {
        Trial unsaid = Trial.of("switch-compare", "current=4.5 A", "coil-resistance=90 Ω", "switch-rating=20 A");
        assertEquals(Verdict.STOP, unsaid.finding("The rating of the switch").verdict());
        Trial heater = Trial.of("switch-compare", "current=4.5 A", "coil-resistance=90 Ω", "switch-rating=20 A", "switched-load=resistive");
        assertEquals(Verdict.PASSED, heater.finding("The rating of the switch").verdict());
    }
}
