package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which row of Table 5 may stand for a size it does not list. */
class TableFiveTest {
    @ParameterizedTest(name = "{0} is taken for {1}")
    @CsvSource({
        // areas: 18 0.823, 16 1.31, 14 2.08, 12 3.31, 10 5.26, 8 8.37, 6 13.3, 4 21.2, 3 26.7, 2 33.6, 1 42.4, 1/0 53.5, 3/0 85.0, 4/0 107
        "1 mm2, 18 AWG", "1.5 mm2, 16 AWG", "2 mm2, 16 AWG", "2.5 mm2, 14 AWG", "4 mm2, 12 AWG", "6 mm2, 10 AWG", "10 mm2, 8 AWG",
        "16 mm2, 6 AWG", "25 mm2, 4 AWG", "35 mm2, 3 AWG", "50 mm2, 1 AWG", "70 mm2, 1/0 AWG", "95 mm2, 3/0 AWG", "120 mm2, 4/0 AWG",
        "13 AWG, 14 AWG", "5 AWG, 6 AWG", "5833 circular mil, 14 AWG", "6530 circular mil, 12 AWG"
    })
    void letsOnlyAThinnerRowStandIn(String size, String row) {
        ChoiceStep step = (ChoiceStep) trial("design-current=1 A", "size=" + size).working().steps().get(0);
        assertEquals(row, step.result().text().replace('\u00a0', ' '));
        assertEquals(
                Trial.of("fuse-choice", "ambient=30 °C", "design-current=1 A", "size=" + row, "insulation-temperature=t105").value("ampacity"),
                trial("design-current=1 A", "size=" + size).value("ampacity"), 0);
    }

    @ParameterizedTest(name = "{0}: {1} A in all three calculators")
    @CsvSource({
        // 105 °C: 16 AWG 25 A, 14 AWG 35 A, 12 AWG 45 A, 10 AWG 60 A, 3 AWG 180 A; in an engine space times 0.85
        "1.5 mm2, 25, no", "2.5 mm2, 35, no", "4 mm2, 45, no", "6 mm2, 60, no", "35 mm2, 180, no", "2.5 mm2, 29.75, yes"
    })
    void allThreeReadTheSameRow(String size, double amperes, String engineSpace) {
        String engine = "engine-space=" + engineSpace;
        Trial ampacity = Trial.asPrinted("ampacity", "rule-set=33-cfr-183", "insulation-temperature=t105", "size=" + size, engine);
        // the shortest run lets every size pass the drop; asked for exactly this current, the size is the thinnest that carries it
        Trial run = Trial.asPrinted(
                "size-for-run", "rule-set=33-cfr-183", "insulation-temperature=t105", "current=" + amperes + " A", "route-length=0.05 m",
                engine);
        assertEquals(amperes, trial("design-current=1 A", "size=" + size, engine).value("ampacity"), 1e-9);
        assertEquals(amperes, ampacity.value("ampacity"), 1e-9);
        assertEquals(amperes, run.value("ampacity"), 1e-9);
        assertTrue(ampacity.hasFinding("stands in"));
        assertTrue(run.hasFinding("stands in"));
    }

    @Test
    void saysNothingOfARowOfItsOwn() {
        Trial own = Trial.asPrinted("ampacity", "rule-set=33-cfr-183", "size=12 AWG");
        assertFalse(own.hasFinding("stands in"));
        assertEquals(1, own.working().steps().size());
    }

    @Test
    void showsWhyARowWasLeft() {
        ChoiceStep step = (ChoiceStep) trial("design-current=1 A", "size=35 mm2").working().steps().get(0);
        assertEquals("2\u00a0AWG", step.candidates().get(1).name());
        assertTrue(step.candidates().get(1).reason().contains("too close"), step.candidates().get(1).reason());
        assertTrue(step.candidates().get(2).reason().contains("more copper than 35"), step.candidates().get(2).reason());
        Finding finding = trial("design-current=1 A", "size=35 mm2").finding("stands in");
        assertEquals(Verdict.PASSED, finding.verdict());
        assertTrue(finding.words().contains("3\u00a0AWG, which is thinner, stands in for it"), finding.words());
    }

    /** Table 5 begins at 18 AWG, 0.823 mm². BS 7671 Table 4F3A goes on: 0.75 mm², 6 A; below 0.5 mm² nothing is known. */
    @Test
    void lessCopperThanTheTableHasIsJudgedByTheTableOfCords() {
        Trial thin = trial("design-current=1 A", "size=0.75 mm2");
        assertEquals(6, thin.value("ampacity"), 1e-9);
        assertTrue(thin.hasFinding("0.75\u00a0mm² is thinner than any row"));
        assertFalse(trial("design-current=1 A", "size=0.2 mm2").answers("chosen-rating"));
    }

    private static Trial trial(String... entries) {
        List<String> all = new ArrayList<>(List.of("insulation-temperature=t105", "ambient=30 °C"));
        all.addAll(List.of(entries));
        return Trial.of("fuse-choice", all.toArray(new String[0]));
    }
}
