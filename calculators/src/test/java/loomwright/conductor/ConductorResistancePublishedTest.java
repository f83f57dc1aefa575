package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.PrintedRow;
import loomwright.worked.Trial;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConductorResistancePublishedTest {
    /** Every printed row, through the calculator, at the temperature of its table. */
    @TestFactory
    List<DynamicTest> givesEveryPrintedRow() {
        List<DynamicTest> tests = new ArrayList<>();
        add(tests, "iso-6722-1", "resistance", "iso-6722-1", 20);
        add(tests, "iec-60228", "class-2", "iec-60228-class-2", 20);
        add(tests, "iec-60228", "class-5", "iec-60228-class-5", 20);
        add(tests, "nbs-handbook-100", "resistance-per-1000-ft", "solid-copper", 20);
        add(tests, "nec-chapter-9-table-8", "resistance-per-1000-ft", "nec-stranded", 75);
        assertEquals(12 + 15 + 15 + 28 + 15, tests.size());
        return tests;
    }

    private static void add(List<DynamicTest> tests, String list, String column, String conductor, int celsius) {
        for (PrintedRow row : PrintedRow.read(list, column)) {
            tests.add(DynamicTest.dynamicTest(row.name(), () -> {
                Trial trial = Trial.asPrinted(
                        "conductor-resistance", "conductor=" + conductor, "size=" + row.size(), "length=1 m",
                        "temperature=" + celsius + " °C");
                double off = trial.away("resistance-per-metre", row.printed() + " " + row.unit());
                assertTrue(off <= row.half(), () -> row.name() + " is off by " + off);
            }));
        }
    }

    /** Tolerance: half of the last printed digit. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            NEETS module 4, question 1-12 (a): 2500 ft of No. 12 at 25 °C, by parts of 1250 ft | solid-copper | 12 AWG | 1250 ft | 25 °C | 2 | 4.05 | 0.005
            NEETS module 4, question 1-12 (b): 6000 ft of No. 7 at 25 °C, by parts of 600 ft   | solid-copper | 7 AWG  | 600 ft  | 25 °C | 10 | 3.05 | 0.005
            NEC chapter 9 table 8, as a training page uses it: 200 ft of No. 16 at 75 °C       | nec-stranded | 16 AWG | 200 ft  | 75 °C | 1 | 0.998 | 0.0005
            IEC 60028: one metre of copper of 1 mm² at 20 °C                                   | copper-by-area | 1 mm2 | 1 m    | 20 °C | 1 | 0.017241 | 0.0000005
            """)
    void agreesWithPrint(
            String print, String conductor, String size, String length, String temperature, int parts, double printed, double tolerance) {
        Trial trial = Trial.asPrinted(
                "conductor-resistance", "conductor=" + conductor, "size=" + size, "length=" + length, "temperature=" + temperature);
        assertEquals(printed, parts * trial.value("resistance"), tolerance);
    }

    /**
     * Lessons in Electric Circuits, chapter 12: 14 V, a load of 250 Ω and two wires of 15 Ω at 20 °C, warmed to 35 °C; 12.5 V and then
     * 12.42 V at the load, 0.75 V and then 0.79 V in each wire. The book takes another coefficient of copper (0.004041), which its rounding
     * hides. 1 ÷ (58 × 0.05 mm²) = 344.83 mΩ/m, so 43.5 m have 15 Ω.
     */
    @ParameterizedTest(name = "at {0}: {1} V at the load, {2} V in each wire")
    @CsvSource({"20 °C, 12.5, 0.75, 0.05, 0.005", "35 °C, 12.42, 0.79, 0.005, 0.005"})
    void agreesWithTheBookOnWarmedWires(String temperature, double load, double wire, double loadTolerance, double wireTolerance) {
        double ohms = Trial.asPrinted(
                        "conductor-resistance", "conductor=copper-by-area", "size=0.05 mm2", "length=43.5 m", "temperature=" + temperature)
                .value("resistance");
        double amperes = 14 / (250 + 2 * ohms);
        assertEquals(load, 250 * amperes, loadTolerance);
        assertEquals(wire, ohms * amperes, wireTolerance);
    }

    /** Up to 10 mm² a limit leaves room above pure copper; above that, 50 mm² is known to be named for less. */
    @Test
    void noLimitOfASmallMetricSizeLiesBelowPureCopper() {
        for (PrintedRow row : PrintedRow.read("iec-60228")) {
            double area = Double.parseDouble(row.size().replace(" mm²", ""));
            if (area <= 10) {
                double ideal = Trial.asPrinted("conductor-resistance", "conductor=copper-by-area", "size=" + row.size(), "length=1 m")
                        .value("resistance-per-metre");
                assertFalse(row.printed() < ideal, row::name);
            }
        }
    }
}
