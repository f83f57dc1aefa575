package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loomwright.worked.Trial;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Charts and worked examples in print. A gauge is one of a series, so there is no tolerance on it. */
class SizeForRunPublishedTest {
    private static final String BY_DROP = "rule-set=drop-only;";
    private static final String SMALL_CRAFT = BY_DROP + "method=circular-mil-10.75;length-counts=out-and-back;";

    @TestFactory
    List<DynamicTest> givesTheGaugeOfEveryCellOfTheSmallCraftTables() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (String percent : new String[] {"3", "10"}) {
            for (Cell cell : cells("small-craft-12-v-" + percent + "-percent")) {
                boolean awg = cell.text.endsWith("*");
                String gauge = awg ? cell.text.substring(0, cell.text.length() - 1) : cell.text;
                String entries = SMALL_CRAFT + "conductor=" + (awg ? "solid-copper" : "sae-by-area") + ";allowance=" + percent
                        + " %;route-length=" + cell.down + " ft;current=" + cell.across + " A";
                tests.add(DynamicTest.dynamicTest(
                        percent + " %, " + cell.down + " ft, " + cell.across + " A", () -> assertGauge(gauge, entries)));
            }
        }
        assertEquals(41 + 41, tests.size());
        return tests;
    }

    @TestFactory
    List<DynamicTest> givesTheGaugeOfEveryCellOfThePhotovoltaicChart() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (Cell cell : cells("pv-12-v-2-percent")) {
            String entries = BY_DROP + "conductor=solid-copper;allowance=2 %;route-length=" + cell.text + " ft;current=" + cell.down + " A";
            tests.add(DynamicTest.dynamicTest(cell.down + " A, " + cell.across + " AWG", () -> assertGauge(cell.across, entries)));
        }
        assertEquals(84, tests.size());
        return tests;
    }

    /**
     * Printed cells that contradict the formula of their own table, with the arithmetic: circular mils = 10.75 × A × ft ÷ 0.36 V, against
     * 24 538 for 6 SAE, 37 360 for 4, 62 450 for 2, 77 790 for 1 and 158 600 for 3/0.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            25 ft, 25 A: 18 663 circular mils  | 25 | 25  | 4   | 6
            25 ft, 30 A: 22 396 circular mils  | 25 | 30  | 4   | 6
            25 ft, 50 A: 37 326 circular mils  | 25 | 50  | 2   | 4
            30 ft, 30 A: 26 875 circular mils  | 30 | 30  | 6   | 4
            30 ft, 50 A: 44 792 circular mils  | 30 | 50  | 4   | 2
            30 ft, 70 A: 62 708 circular mils  | 30 | 70  | 2   | 1
            30 ft, 90 A: 80 625 circular mils  | 30 | 90  | 1   | 1/0
            50 ft, 90 A: 134 375 circular mils | 50 | 90  | 4/0 | 3/0
            """)
    void doesNotFollowTheMisprints(String print, String feet, String amperes, String printed, String formula) {
        String entries = SMALL_CRAFT + "conductor=sae-by-area;route-length=" + feet + " ft;current=" + amperes + " A";
        assertGauge(formula, entries);
        assertTrue(!printed.equals(formula));
    }

    /** Misprints of the photovoltaic chart: the distance that fits, by 0.24 V ÷ (A × 2 × ohms per foot), is on the near side of the gauge. */
    @ParameterizedTest(name = "{0} A")
    @CsvSource({"6, 19.2", "8, 14.4"})
    void allowsTheDistanceThatFitsInsteadOfTheMisprint(String amperes, String feet) {
        String entries = BY_DROP + "conductor=solid-copper;allowance=2 %;current=" + amperes + " A;route-length=";
        assertGauge("10", entries + feet + " ft");
        assertTrue(trial(entries + feet + " ft").value("drop-percent") > 1.9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Trade note, bilge pump at 3 %: 10 SAE                 | method=circular-mil-10.75;length-counts=out-and-back;conductor=sae-by-area;route-length=21 ft;current=10 A                | 10
            The same: 12 AWG would do                             | method=circular-mil-10.75;length-counts=out-and-back;conductor=solid-copper;route-length=21 ft;current=10 A               | 12
            Trade catalogue p. 53, bilge pump at 10 %: 16         | method=circular-mil-10.75;length-counts=out-and-back;conductor=solid-copper;route-length=21 ft;current=10 A;allowance=10 % | 16
            FAA Table 11-7, line 1: 1 V, 107 ft, 20 A             | length-counts=out-and-back;conductor=nec-stranded;supply-voltage=28 V;allowance=1 V;route-length=107 ft;current=20 A      | 6
            FAA Table 11-7, line 3: 4 V, 88 ft, 20 A              | length-counts=out-and-back;conductor=nec-stranded;supply-voltage=28 V;allowance=4 V;route-length=88 ft;current=20 A       | 12
            FAA Table 11-8, line 1: 1 V, 39 ft, 20 A              | length-counts=out-and-back;conductor=nec-stranded;supply-voltage=28 V;allowance=1 V;route-length=39 ft;current=20 A       | 10
            FAA Table 11-8, line 2: 0.5 V, 19.5 ft, 20 A          | length-counts=out-and-back;conductor=nec-stranded;supply-voltage=28 V;allowance=0.5 V;route-length=19.5 ft;current=20 A   | 10
            """)
    void agreesWithWorkedExamples(String print, String entries, String gauge) {
        assertGauge(gauge, BY_DROP + entries);
    }

    /** Printed to whole circular mils. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Trade note, bilge pump at 3 %   | 3 %  | 6271
            Trade catalogue, bilge pump 10 % | 10 % | 1881
            """)
    void findsThePrintedCircularMils(String print, String allowance, double printed) {
        Trial trial = trial(SMALL_CRAFT + "conductor=sae-by-area;route-length=21 ft;current=10 A;allowance=" + allowance);
        assertEquals(printed, trial.value("least-area"), 0.5);
    }

    private static void assertGauge(String gauge, String entries) {
        assertEquals(0, trial(entries).away("chosen-gauge", gauge + " AWG"), 1e-9);
    }

    private static Trial trial(String entries) {
        return Trial.of("size-for-run", entries.split(";"));
    }

    /** One cell of a printed chart. */
    private record Cell(String across, String down, String text) {}

    private static List<Cell> cells(String chart) throws IOException {
        List<Cell> cells = new ArrayList<>();
        String[] head = null;
        for (String line : Files.readAllLines(Path.of("src/test/resources/printed-charts/" + chart + ".csv"))) {
            String[] row = line.split(",");
            if (line.startsWith("#")) {
                continue;
            }
            for (int i = 1; head != null && i < row.length; i++) {
                if (!row[i].equals("-")) {
                    cells.add(new Cell(head[i], row[0], row[i]));
                }
            }
            head = head == null ? row : head;
        }
        return cells;
    }
}
