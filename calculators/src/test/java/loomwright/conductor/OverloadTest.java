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

/** A current that a conductor does not carry is named by every calculator that is told both. */
class OverloadTest {
    /** 18 AWG stands in for 1 mm²: 10 A × 0.82 = 8.2 A at 60 °C and 40 °C; 20 A at 105 °C and 30 °C. */
    @ParameterizedTest(name = "{0} A through 1 mm²: {1}")
    @CsvSource({"8.2, none", "8.3, CAUTION", "20, CAUTION", "20.1, STOP", "30, STOP"})
    void aShortRunLosesLittleAndBurnsAllTheSame(String amperes, String verdict) {
        Trial drop = Trial.of("voltage-drop", "current=" + amperes + " A", "route-length=0.1 m", "size=1 mm²");
        Trial reading = Trial.of("expected-reading", "voltage-at-supply=12.6 V", "current=" + amperes + " A", "route-length=0.1 m", "size=1 mm²");
        for (Trial trial : new Trial[] {drop, reading}) {
            if (verdict.equals("none")) {
                assertFalse(trial.hasFinding("The current, "));
            } else {
                assertEquals(Verdict.valueOf(verdict), trial.finding("The current, ").verdict());
            }
        }
    }

    /** A data sheet that gives 1 mm² a hundred amperes was read wrongly: Table 5 ends at 35 A for 16 AWG, which is thicker, with insulation for 200 °C. */
    @Test
    void aDataSheetCannotMakeCopperCarryMoreThanAnyTablePrints() {
        Trial wrong = Trial.of("fuse-choice", "design-current=15 A", "size=1 mm²", "sheet-ampacity=100 A");
        assertEquals(Verdict.STOP, wrong.finding("The ampacity of 1\u00a0mm² by its data sheet").verdict());
        assertEquals(35, wrong.finding("The ampacity of 1\u00a0mm² by its data sheet").limit().value(), 1e-9);
        assertFalse(Trial.of("fuse-choice", "design-current=10 A", "size=1 mm²", "sheet-ampacity=35 A").hasFinding("the most that is printed"));
    }

    /** √(25/75) = 0.58 for 105 °C insulation at 80 °C, a trade rule: 35 A × 0.58 = 20.3 A stops what is above and passes nothing. */
    @Test
    void warmerThanPrintGoesTheFactorStopsAndNeverPasses() {
        String[] roof = {"size=14 AWG", "insulation-temperature=t105", "ambient=80 °C", "design-current=22 A"};
        Trial above = Trial.of("ampacity", roof);
        assertEquals(20.3, above.value("at-most"), 1e-9);
        assertEquals(Verdict.STOP, above.finding("The design current").verdict());
        roof[3] = "design-current=5 A";
        Finding below = Trial.of("ampacity", roof).finding("The design current");
        assertEquals(Verdict.NOT_KNOWN, below.verdict());
        assertTrue(below.words().contains("from memory"), below.words());
        // 90 °C insulation at 60 °C: √(30/60) = 0.71; 30 A of Table 5
        assertEquals(21.3, Trial.of("ampacity", "size=14 AWG", "insulation-temperature=t90", "ambient=60 °C").value("at-most"), 1e-9);
    }
}
