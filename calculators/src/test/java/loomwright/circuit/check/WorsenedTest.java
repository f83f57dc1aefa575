package loomwright.circuit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.WorkedCircuits;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

/** What a change makes worse; the punt of the tests has no stop. Table 5 lets its lamp run carry 22.75 A. */
class WorsenedTest {
    private final Circuit punt = WorkedCircuits.punt();

    private Circuit lampFuse(String rating) {
        return CircuitEdits.changed(punt, "lamp-fuse", "rating", rating).circuit();
    }

    private static CircuitFinding between(Circuit before, Circuit after) {
        return Worsened.first(Examination.of(before), Examination.of(after));
    }

    @Test
    void aChangeBackMakesNothingWorse() {
        assertNull(between(punt, punt));
        assertNull(between(lampFuse("30 A"), punt));
    }

    @Test
    void aNewStopIsWorse() {
        CircuitFinding found = between(punt, lampFuse("30 A"));
        assertEquals(Verdict.STOP, found.finding().verdict());
        assertEquals("lamp-fuse", found.partId());
    }

    @Test
    void aStopFurtherBeyondItsLimitIsWorseAndOneNearerIsNot() {
        CircuitFinding found = between(lampFuse("30 A"), lampFuse("40 A"));
        assertNotNull(found);
        assertEquals(40, found.finding().figure().base(), 1e-9);
        assertNull(between(lampFuse("40 A"), lampFuse("40 A")));
        assertNull(between(lampFuse("40 A"), lampFuse("30 A")));
    }

    /** 20 m of the lamp run lose more than the 0.36 V that is allowed, see ExaminationTest: a caution. */
    @Test
    void aCautionWhereThereWasNoneIsWorse() {
        Circuit far = CircuitEdits.changed(punt, "lamp-run", "route-length", "20 m").circuit();
        CircuitFinding found = between(punt, far);
        assertEquals(Verdict.CAUTION, found.finding().verdict());
        assertEquals(Check.VOLTAGE_DROP, found.check());
        assertNull(between(far, punt));
    }
}
