package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

class HoldingTest {
    private static Finding check(DeviceKind kind, double rating, double current) {
        return Holding.check("F1", kind, Quantity.of(rating, Units.AMPERE), Quantity.of(current, Units.AMPERE)).finding();
    }

    /** NEC 210.20(A): 80 % of 30 A is 24 A. */
    @Test
    void aFuseLinkCarriesEightyPerCentForHours() {
        assertEquals(Verdict.PASSED, check(DeviceKind.BLADE, 30, 24).verdict());
        assertEquals(Verdict.CAUTION, check(DeviceKind.BLADE, 30, 24.1).verdict());
    }

    /** Trade note on one marine-type breaker: carries 70 % continuously; 70 % of 30 A is 21 A. */
    @Test
    void aBreakerCarriesSeventyPerCentForHours() {
        assertEquals(Verdict.PASSED, check(DeviceKind.BREAKER, 30, 21).verdict());
        Finding above = check(DeviceKind.BREAKER, 30, 23.5);
        assertEquals(Verdict.CAUTION, above.verdict());
        assertEquals("The load on F1 as a share of its rating, 78.3\u00a0%, is above what a published breaker carries for hours, 70\u00a0%.", above.words());
    }
}
