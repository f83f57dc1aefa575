package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.TableStep;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConductorResistanceTest {
    private static final double EXACT = 1e-9;

    @Test
    void multipliesTheRowByTheLength() {
        // 4.2 m × 7.60 mΩ/m = 31.92 mΩ
        Trial trial = Trial.asPrinted("conductor-resistance", "conductor=iso-6722-1", "size=2.5 mm2", "length=4.2 m");
        assertEquals(0.03192, trial.value("resistance"), EXACT);
        assertEquals(7.6, trial.value("resistance-per-metre"), EXACT);
        assertEquals(7.6, trial.value("resistance-per-metre-20"), EXACT);
    }

    @Test
    void namesTheRowItRead() {
        TableStep step = (TableStep) Trial.asPrinted("conductor-resistance", "conductor=solid-copper", "size=2/0 AWG", "length=1 m").working()
                .steps().get(0);
        assertEquals("2/0\u00a0AWG", step.row().name());
        assertEquals("nbs-handbook-100", step.row().source().document().key());
    }

    @ParameterizedTest(name = "{0} °C: {1} of the figure at 20 °C")
    @CsvSource({
        // (234.5 + θ) ÷ 254.5
        "-20, 0.842829", "0, 0.921415", "20, 1", "25, 1.019646", "75, 1.216110", "105, 1.333988"
    })
    void growsWithTemperature(String celsius, double times) {
        Trial trial = Trial.asPrinted(
                "conductor-resistance", "conductor=iso-6722-1", "size=1 mm2", "length=1 m", "temperature=" + celsius + " °C");
        assertEquals(18.5 * times, trial.value("resistance-per-metre"), 18.5 * 1e-6);
        assertEquals(18.5, trial.value("resistance-per-metre-20"), EXACT);
    }

    @Test
    void bringsATableOf75DegreesBackTo20() {
        // 1.98 Ω ÷ 304.8 m = 6.49606 mΩ/m; × 254.5 ÷ 309.5 = 5.34166 mΩ/m
        Trial trial = Trial.asPrinted("conductor-resistance", "conductor=nec-stranded", "size=12 AWG", "length=1 m");
        assertEquals(5.3416, trial.value("resistance-per-metre"), 0.0001);
        assertEquals(5.3416, trial.value("resistance-per-metre-20"), 0.0001);
        assertEquals(
                6.49606,
                Trial.asPrinted("conductor-resistance", "conductor=nec-stranded", "size=12 AWG", "length=1 m", "temperature=75 °C")
                        .value("resistance-per-metre"),
                0.000005);
    }

    @Test
    void worksFromTheAreaWhereThereIsNoTable() {
        // 1 ÷ (58 × 2.5) = 6.8966 mΩ/m; 12 AWG has 3.3088 mm²: 1 ÷ (58 × 3.3088) = 5.2108 mΩ/m
        assertEquals(
                6.8966, Trial.asPrinted("conductor-resistance", "conductor=copper-by-area", "size=2.5 mm2", "length=1 m")
                        .value("resistance-per-metre"),
                0.0001);
        assertEquals(
                5.2108, Trial.asPrinted("conductor-resistance", "conductor=copper-by-area", "size=12 AWG", "length=1 m")
                        .value("resistance-per-metre"),
                0.0001);
    }

    @Test
    void readsSaeGaugeByItsOwnArea() {
        // 12 SAE: 2.96 mm²; 1 ÷ (58 × 2.96) = 5.8248 mΩ/m
        assertEquals(
                5.8248, Trial.asPrinted("conductor-resistance", "conductor=sae-by-area", "size=12 AWG", "length=1 m")
                        .value("resistance-per-metre"),
                0.0001);
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource(delimiter = '|', textBlock = """
            iso-6722-1         | 5 mm2    | size: Size 5 mm² is not in this table, which lists mm². Choose 4 mm² (thinner) or 6 mm² (thicker), or another kind of conductor
            iso-6722-1         | 12 AWG   | size: Size 12 AWG (3.31 mm²) is not in this table, which lists mm². Choose 3 mm² (thinner) or 4 mm² (thicker), or another kind of conductor
            iec-60228-class-5  | 0.35 mm2 | size: Size 0.35 mm² is not in this table, which lists mm². Choose 0.5 mm² (thicker), or another kind of conductor
            iec-60228-class-2  | 150 mm2  | size: Size 150 mm² is not in this table, which lists mm². Choose 120 mm², or another kind of conductor
            nec-stranded       | 7 AWG    | size: Size 7 AWG (10.5 mm²) is not in this table, which lists AWG. Choose 8 AWG (thinner) or 6 AWG (thicker), or another kind of conductor
            sae-by-area        | 3 AWG    | size: Size 3 AWG (26.7 mm²) is not in this table, which lists SAE gauge numbers. Choose 4 AWG (thinner) or 2 AWG (thicker), or another kind of conductor
            solid-copper       | 2.5 mm2  | size: Size 2.5 mm² is not in this table, which lists AWG. Choose 14 AWG (thinner) or 13 AWG (thicker), or another kind of conductor
            """)
    void refusesASizeTheTableLacksAndNamesItsNeighbours(String conductor, String size, String message) {
        assertEquals(
                message,
                Trial.asPrinted("conductor-resistance", "conductor=" + conductor, "size=" + size, "length=1 m").refusal().replace('\u00a0', ' '));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            length=          | length: Length of conductor is empty: enter a number between 0.01 m and 1000 m
            length=0 m       | length: Length of conductor must be between 0.01 m and 1000 m, but is 0 m
            length=2 kg      | length: Length of conductor has a unit we do not know: “kg”. Enter a number between 0.01 m and 1000 m
            length=2 A       | length: Length of conductor cannot be in A. Enter a number between 0.01 m and 1000 m
            length=long      | length: Length of conductor has no number. Enter a number between 0.01 m and 1000 m
            """)
    void refusesALengthItCannotRead(String length, String message) {
        assertEquals(message, Trial.asPrinted("conductor-resistance", "size=1 mm2", length).refusal().replace('\u00a0', ' '));
    }

    @Test
    void warnsOfARowFromMemory() {
        assertEquals(
                Verdict.NOT_KNOWN, Trial.asPrinted("conductor-resistance", "conductor=iso-6722-1", "size=25 mm2", "length=1 m")
                        .finding("from memory").verdict());
        assertFalse(Trial.asPrinted("conductor-resistance", "conductor=iso-6722-1", "size=16 mm2", "length=1 m").hasFinding("from memory"));
        assertFalse(Trial.asPrinted("conductor-resistance", "conductor=iec-60228-class-5", "size=25 mm2", "length=1 m").hasFinding("from memory"));
    }

    @ParameterizedTest(name = "{0}: {1} is {2}")
    @CsvSource({
        // 4.2 m of 2.5 mm² at 75 °C: 7.60 × 4.2 = 31.92 mΩ, × 1.21611 = 38.818 mΩ
        "length=4.2 m, 77.64 mΩ, counted-out-and-back",
        "length=4.2 m, 11.83 mΩ, feet-for-metres",
        "length=4.2 m, 26.25 mΩ, temperature-upside-down",
        "length=4.2 m, 31.92 mΩ, temperature-left-out",
        // 14 ft are 4.267 m; taken as metres: 7.60 × 14 × 1.21611 = 129.4 mΩ
        "length=14 ft, 129.4 mΩ, feet-for-metres"
    })
    void knowsTheSlip(String length, String answer, String slip) {
        Trial trial = Trial.asPrinted("conductor-resistance", "conductor=iso-6722-1", "size=2.5 mm2", length, "temperature=75 °C");
        assertEquals(slip, trial.slipBehind("resistance", answer));
    }

    @Test
    void saysNothingOfTemperatureWhereThereIsNoCorrection() {
        Trial trial = Trial.asPrinted("conductor-resistance", "conductor=iso-6722-1", "size=2.5 mm2", "length=4.2 m");
        assertTrue(trial.working().slips().stream().noneMatch(slip -> slip.key().startsWith("temperature")));
    }

    @Test
    void carriesTheConductorOn() {
        var next = Trial.asPrinted("conductor-resistance", "conductor=nec-stranded", "size=12 AWG", "length=1 m").working().nextQuestions().get(0);
        assertEquals("voltage-drop", next.calculatorKey());
        assertEquals("nec-stranded", next.carried().get("conductor"));
        assertEquals("12\u00a0AWG", next.carried().get("size"));
    }
}
