package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Candidate;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Trial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Charts and worked examples in print. A gauge is one of a series, so there is no tolerance on it. */
class SizeForRunPublishedTest {
    private static final String BY_DROP = "rule-set=drop-only;";
    private static final String SMALL_CRAFT = BY_DROP + "method=circular-mil-10.75;length-counts=out-and-back;";

    /** Single cells of charts in print: small-craft wire sizes of a marine catalogue, and a 2 % chart of the photovoltaic trade. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            3 %, 10 ft out and back, 10 A  | length-counts=out-and-back;method=circular-mil-10.75;conductor=sae-by-area;allowance=3 %;route-length=10 ft;current=10 A  | 14
            3 %, 10 ft out and back, 30 A  | length-counts=out-and-back;method=circular-mil-10.75;conductor=sae-by-area;allowance=3 %;route-length=10 ft;current=30 A  | 10
            3 %, 10 ft out and back, 60 A  | length-counts=out-and-back;method=circular-mil-10.75;conductor=sae-by-area;allowance=3 %;route-length=10 ft;current=60 A  | 6
            10 %, 25 ft out and back, 20 A | length-counts=out-and-back;method=circular-mil-10.75;conductor=sae-by-area;allowance=10 %;route-length=25 ft;current=20 A | 12
            10 %, 30 ft out and back, 40 A | length-counts=out-and-back;method=circular-mil-10.75;conductor=sae-by-area;allowance=10 %;route-length=30 ft;current=40 A | 8
            2 %, 45 ft one way, 1 A        | conductor=solid-copper;allowance=2 %;route-length=45 ft;current=1 A                                                     | 14
            2 %, 27.5 ft one way, 4 A      | conductor=solid-copper;allowance=2 %;route-length=27.5 ft;current=4 A                                                   | 10
            2 %, 145 ft one way, 2 A       | conductor=solid-copper;allowance=2 %;route-length=145 ft;current=2 A                                                    | 6
            """)
    void agreesWithSingleCellsOfCharts(String print, String entries, String gauge) {
        assertGauge(gauge, BY_DROP + entries);
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
        Trial trial = trial(entries);
        if (entries.contains("sae-by-area")) {
            assertEquals(gauge + "\u00a0SAE", taken(trial));
        } else {
            assertEquals(0, trial.away("chosen-gauge", gauge + " AWG"), 1e-9);
        }
    }

    private static String taken(Trial trial) {
        return trial.working().steps().stream().filter(step -> step instanceof ChoiceStep).map(step -> (ChoiceStep) step)
                .flatMap(step -> step.candidates().stream()).filter(Candidate::taken).findFirst().orElseThrow().name();
    }

    private static Trial trial(String entries) {
        return Trial.asPrinted("size-for-run", entries.split(";"));
    }
}
