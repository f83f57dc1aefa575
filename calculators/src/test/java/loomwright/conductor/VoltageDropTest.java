package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VoltageDropTest {
    private static final double EXACT = 1e-9;

    @Test
    void countsTheWayOutAndTheWayBack() {
        // 10 A × 2 × 4.2 m × 7.60 mΩ/m = 0.6384 V
        Trial trial = bench();
        assertEquals(0.6384, trial.value("drop"), EXACT);
        assertEquals(8.4, trial.value("circuit-length"), EXACT);
        assertEquals(63.84, trial.value("circuit-resistance"), EXACT);
        assertEquals(5.32, trial.value("drop-percent"), EXACT);
        assertEquals(11.3616, trial.value("voltage-at-load"), EXACT);
        assertEquals(6.384, trial.value("power-lost"), EXACT);
    }

    @Test
    void leavesALengthOutAndBackAlone() {
        assertEquals(0.3192, bench("length-counts=out-and-back").value("drop"), EXACT);
        assertEquals(4.2, bench("length-counts=out-and-back").value("circuit-length"), EXACT);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // out and back 8.4 m = 27.559 ft; 2.5 mm² = 4933.8 circular mils: 10.75 × 10 × 27.559 ÷ 4933.8 = 0.6005 V
        "circular-mil-10.75, 0.6005",
        // 2 × 4.2 × 10 ÷ (56 × 2.5) = 0.6 V
        "copper-56, 0.6",
        // 0.0164 × 10 × 8.4 ÷ 2.5 = 0.5510 V
        "copper-0.0164, 0.5510"
    })
    void worksTheHandbookFormulas(String method, double volts) {
        assertEquals(volts, bench("method=" + method).value("drop"), 0.00005);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"table", "circular-mil-10.75", "copper-56", "copper-0.0164"})
    void givesTheSameDropForOneLengthCountedBothWays(String method) {
        assertEquals(
                bench("method=" + method).value("drop"),
                bench("method=" + method, "route-length=8.4 m", "length-counts=out-and-back").value("drop"), EXACT);
    }

    @Test
    void takesAResistanceAsItIsPrinted() {
        // 0.00126 Ω/ft × 39 ft × 20 A = 0.9828 V
        assertEquals(
                0.9828,
                Trial.asPrinted(
                                "voltage-drop", "current=20 A", "route-length=39 ft", "length-counts=out-and-back",
                                "method=given-resistance",
                                "resistance-per-length=0.00126 Ω/ft")
                        .value("drop"),
                EXACT);
    }

    @Test
    void warmsTheConductor() {
        // 0.6384 V × (234.5 + 60) ÷ 254.5 = 0.73874 V
        assertEquals(0.73874, bench("temperature=60 °C").value("drop"), 0.000005);
    }

    @Test
    void readsSaeGaugeByItsOwnAreaInEveryMethod() {
        // 5833 circular mils: 10.75 × 10 × 21 ÷ 5833 = 0.3870 V; as AWG it would be 0.3457 V
        Trial trial = Trial.asPrinted(
                "voltage-drop", "current=10 A", "route-length=21 ft", "length-counts=out-and-back", "method=circular-mil-10.75",
                "conductor=sae-by-area", "size=12 AWG");
        assertEquals(0.3870, trial.value("drop"), 0.00005);
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            method=table            | size=              | size: Size of conductor is empty: enter a size such as 2.5 mm² or 14 AWG
            method=copper-56        | size=              | size: Size of conductor is empty: enter a size such as 2.5 mm² or 14 AWG
            method=given-resistance | size=              | resistance-per-length: Resistance per length is needed here: enter a number
            method=table            | size=5 mm2         | size: Size 5 mm² is not in this table, which lists mm². Choose 4 mm² (thinner) or 6 mm² (thicker), or another kind of conductor
            method=table            | route-length=200 m | current: Design current cannot flow here: the conductors alone would take 30.4 V of 12 V. Take a thicker conductor, a shorter route or a smaller current
            method=guess            | size=1 mm2         | method: Way of working it out has no choice “guess”: choose one of table, given-resistance, circular-mil-10.75, copper-56, copper-0.0164
            """)
    void refusesWhatHasNoAnswer(String method, String second, String message) {
        assertEquals(message, bench(method, second).refusal().replace('\u00a0', ' '));
    }

    @Test
    void holdsTheDropAgainstBothAllowances() {
        Finding three = bench().finding("Main feeders");
        assertEquals(Verdict.CAUTION, three.verdict());
        assertEquals("abyc-e-11", three.source().document().key());
        assertTrue(three.words().contains("the drop, 0.638\u00a0V, is above 3\u00a0% of 12\u00a0V, 0.36\u00a0V"), three.words());
        assertEquals(Verdict.PASSED, bench().finding("not critical").verdict());
        assertEquals(Verdict.PASSED, bench("current=5 A").finding("Main feeders").verdict());
        assertEquals(Verdict.CAUTION, bench("current=20 A").finding("not critical").verdict());
    }

    @Test
    void saysThatADropOfTheWholeAllowanceIsClose() {
        // 10.75 × 10 A × 21 ft ÷ 0.36 V = 6270.83 circular mils
        Trial trial = Trial.asPrinted(
                "voltage-drop", "current=10 A", "route-length=21 ft", "length-counts=out-and-back", "method=circular-mil-10.75",
                "size=6270.8333334 circular mil");
        assertEquals(Verdict.CAUTION, trial.finding("Main feeders").verdict());
        assertTrue(trial.finding("Main feeders").words().contains("only just within"));
    }

    @Test
    void warnsOfTheOptimisticConstant() {
        assertEquals(Verdict.CAUTION, bench("method=copper-0.0164").finding("0.0164 is below that of copper").verdict());
        assertFalse(bench("method=copper-56").hasFinding("0.0164"));
    }

    @Test
    void opensWithWarmCopper() {
        // 0.6384 V at 20 °C × (234.5 + 40) ÷ (234.5 + 20)
        assertEquals(0.6886, Trial.of("voltage-drop", "current=10 A", "route-length=4.2 m", "size=2.5 mm2").value("drop"), 0.00005);
    }

    @Test
    void warnsOfARowFromMemory() {
        assertEquals(Verdict.NOT_KNOWN, bench("size=25 mm2").finding("from memory").verdict());
        assertFalse(bench("size=25 mm2", "method=copper-56").hasFinding("from memory"));
        assertFalse(bench().hasFinding("from memory"));
    }

    @ParameterizedTest(name = "{0}: {2} for {1} is {3}")
    @CsvSource({
        "length-counts=one-way, drop, 0.3192 V, forgot-the-return",
        "length-counts=one-way, drop, 1.277 V, return-counted-twice",
        "length-counts=one-way, drop, 0.1946 V, feet-for-metres",
        // 8.4 ft taken as metres: the right 10 × 8.4 ft × 0.3048 × 7.6 mΩ = 0.1946 V
        "route-length=4.2 ft, drop, 0.6384 V, feet-for-metres",
        // 0.6384 ÷ 11.3616 = 5.619 %; of 13.8 V 4.626 %
        "length-counts=one-way, drop-percent, 5.619 %, share-of-the-load-voltage",
        "length-counts=one-way, drop-percent, 4.626 %, share-of-another-voltage",
        "supply-voltage=24 V, drop-percent, 5.32 %, share-of-another-voltage",
        "length-counts=one-way, voltage-at-load, 12.638 V, added-the-drop",
        "length-counts=one-way, power-lost, 120 W, supply-voltage-for-drop",
        "method=copper-56, drop, 0.3 V, forgot-the-return",
        "method=circular-mil-10.75, drop, 0.3003 V, forgot-the-return"
    })
    void knowsTheSlip(String entry, String asked, String answer, String slip) {
        assertEquals(slip, bench(entry).slipBehind(asked, answer));
    }

    @Test
    void carriesCurrentAndSizeOnToTheFuse() {
        var carried = bench().working().nextQuestions().get(0).carried();
        assertEquals("10\u00a0A", carried.get("design-current"));
        assertEquals("2.5\u00a0mm²", carried.get("size"));
    }

    @Test
    void carriesSaeGaugeByItsAreaSoThatNoOneTakesItForAwg() {
        var carried = bench("conductor=sae-by-area", "size=12 AWG").working().nextQuestions().get(0).carried();
        assertEquals("5833\u00a0circular mil", carried.get("size"));
        // 12 AWG of Table 5 would be 25 A in 60 °C insulation; 5833 circular mils have less copper than that row, so 14 AWG stands in: 20 A
        assertEquals(20, Trial.of("fuse-choice", "ambient=30 °C", "design-current=1 A", "size=" + carried.get("size")).value("ampacity"), EXACT);
    }

    /** The run to the bench of the trailer, with entries changed; a later entry replaces an earlier one. */
    private static Trial bench(String... changes) {
        List<String> entries = new ArrayList<>(List.of("current=10 A", "route-length=4.2 m", "conductor=iso-6722-1", "size=2.5 mm2"));
        entries.addAll(List.of(changes));
        return Trial.asPrinted("voltage-drop", entries.toArray(new String[0]));
    }
}
