package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import loomwright.worked.PrintedRow;
import loomwright.worked.Trial;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FuseChoicePublishedTest {
    private static final double EXACT = 1e-9;

    /** Whole amperes of the regulation's table: each is met exactly, and half as much again is the limit of 183.455(c)(1). */
    @TestFactory
    List<DynamicTest> takesEveryCellOfTableFive() {
        List<PrintedRow> rows = PrintedRow.read("33-cfr-183-425-table-5");
        assertEquals(15 * 7, rows.size());
        return rows.stream()
                .map(row -> DynamicTest.dynamicTest(row.name(), () -> {
                    Trial trial = Trial.of(
                            "fuse-choice", "ambient=30 °C", "design-current=1 A", "size=" + row.size(), "insulation-temperature=" + row.column(),
                            "fuse-rule=33-cfr-183");
                    assertEquals(row.printed(), trial.value("ampacity"), EXACT);
                    assertEquals(1.5 * row.printed(), trial.value("highest-rating"), EXACT);
                }))
                .toList();
    }

    /** The sheet gives what a 40 A fuse-link carries: such a current, for a short while, asks for exactly 40 A. */
    @ParameterizedTest(name = "large blade fuse-link sheet, p. 3: 40 A carries {1} A at {0}")
    @CsvSource({"20 °C, 40", "65 °C, 34", "85 °C, 30", "110 °C, 25", "125 °C, 22"})
    void agreesWithTheReRatingSheet(String ambient, String amperes) {
        Trial trial = Trial.of(
                "fuse-choice", "ambient=30 °C", "design-current=" + amperes + " A", "continuous=no", "size=4 AWG", "insulation-temperature=t105",
                "fuse-type=large-blade", "fuse-ambient=" + ambient);
        assertEquals(40, trial.value("least-rating"), EXACT);
        assertEquals(40, trial.value("chosen-rating"), EXACT);
    }

    /** Published the other way round: the device is rated at 125 % of the continuous load. */
    @ParameterizedTest(name = "NEC 210.20(A): {0} A for hours asks for {1} A")
    @CsvSource({"8, 10", "16, 20", "24, 30", "12, 15"})
    void agreesWithTheRuleForContinuousLoads(String load, double rating) {
        Trial trial = Trial.of("fuse-choice", "ambient=30 °C", "design-current=" + load + " A", "size=8 AWG", "insulation-temperature=t105");
        assertEquals(rating, trial.value("least-rating"), EXACT);
        assertEquals(rating, trial.value("chosen-rating"), EXACT);
    }

    /** 1.5 × 25 A = 37.5 A, with 35 A the next standard size below. */
    @ParameterizedTest(name = "33 CFR 183.455(c)(1), 16 AWG, 105 °C: {0} A asked")
    @CsvSource({"25, 25", "24, 25"})
    void agreesWithTheWorkedLimit(String load, double rating) {
        Trial trial = Trial.of(
                "fuse-choice", "ambient=30 °C", "design-current=" + load + " A", "continuous=no", "size=16 AWG", "insulation-temperature=t105",
                "fuse-rule=33-cfr-183");
        assertEquals(37.5, trial.value("highest-rating"), EXACT);
        assertEquals(rating, trial.value("chosen-rating"), EXACT);
        assertEquals("largest-allowed", trial.slipBehind("chosen-rating", "35 A"));
    }
}
