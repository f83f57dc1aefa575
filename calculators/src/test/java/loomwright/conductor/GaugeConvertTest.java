package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.ChoiceStep;
import loomwright.worked.Finding;
import loomwright.worked.FormulaStep;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugeConvertTest {
    @Test
    void worksAGaugeFromItsRule() {
        FormulaStep step = (FormulaStep) Trial.of("gauge-convert", "size=12 AWG").working().steps().get(0);
        assertEquals("d = 0.005\u00a0in × 92^((36 − n) ÷ 39)", step.formula().symbolicText());
        assertEquals(
                "d = 0.005\u00a0in × 92^((36 − 12) ÷ 39) = 2.053\u00a0mm", step.formula().workedText(step.values(), step.result()));
    }

    @ParameterizedTest(name = "{0}: {1} mm across, {2} mm²")
    @CsvSource({
        // 0.5 mm × 0.5 mm × 0.785398 = 0.19635 mm²; √(4 × 2.5 ÷ 3.14159) = 1.7841 mm; 4/0 is 0.46 in = 11.684 mm across
        "0.5 mm, 0.5, 0.19635", "2.5 mm2, 1.7841, 2.5", "4/0 AWG, 11.684, 107.219", "36 AWG, 0.127, 0.012668", "0.1 in, 2.54, 5.0671"
    })
    void convertsAreaAndDiameter(String size, double millimetres, double squareMillimetres) {
        Trial trial = Trial.of("gauge-convert", "size=" + size);
        assertEquals(millimetres, trial.value("diameter"), millimetres * 1e-4);
        assertEquals(squareMillimetres, trial.value("area"), squareMillimetres * 1e-4);
    }

    @ParameterizedTest(name = "{0}: nearest {1}, enough {2}")
    @CsvSource({
        // areas by the gauge rule: 18 0.823, 16 1.31, 14 2.08, 12 3.31, 10 5.26, 8 8.37, 6 13.3, 4 21.2, 2 33.6, 1/0 53.5, 4/0 107.2: 12.2 above 95, 12.8 below 120
        "18 AWG, 0.75, 1", "16 AWG, 1.5, 1.5", "14 AWG, 2.5, 2.5", "12 AWG, 4, 4", "10 AWG, 6, 6", "8 AWG, 10, 10", "6 AWG, 16, 16",
        "4 AWG, 25, 25", "2 AWG, 35, 35", "1/0 AWG, 50, 70", "4/0 AWG, 95, 120", "2.5 mm2, 2.5, 2.5", "3 mm2, 2.5, 4", "0.01 mm2, 0.5, 0.5"
    })
    void findsTheMetricNeighbours(String size, double nearest, double enough) {
        Trial trial = Trial.of("gauge-convert", "size=" + size);
        assertEquals(nearest, trial.value("nearest-metric"), 1e-12);
        assertEquals(enough, trial.value("next-larger-metric"), 1e-12);
    }

    @ParameterizedTest(name = "{0}: nearest {1} AWG, enough {2} AWG")
    @CsvSource({
        // AWG numbers as the calculator holds them: 0 is 1/0, −3 is 4/0
        "2.5 mm2, 13, 13", "4 mm2, 11, 11", "35 mm2, 2, 1", "50 mm2, 0, 0", "70 mm2, -1, -2", "6500 circular mil, 12, 12",
        "0.1016 mm, 38, 37", "12 AWG, 12, 12", "0.005 mm2, 40, 40"
    })
    void findsTheNeighboursAmongTheGauges(String size, double nearest, double enough) {
        Trial trial = Trial.of("gauge-convert", "size=" + size);
        assertEquals(nearest, trial.value("nearest-awg"), 1e-9);
        assertEquals(enough, trial.value("next-larger-awg"), 1e-9);
    }

    @Test
    void saysSoWhenTheSeriesEnd() {
        Trial trial = Trial.of("gauge-convert", "size=150 mm2");
        assertFalse(trial.answers("next-larger-metric"));
        assertFalse(trial.answers("next-larger-awg"));
        assertEquals(120, trial.value("nearest-metric"), 1e-12);
        assertTrue(trial.finding("20\u00a0% less copper").remedy().contains("series here ends at 120"));
        assertTrue(trial.finding("28.5\u00a0% less copper").remedy().startsWith("AWG ends at 4/0"));
    }

    @Test
    void listsTheSizesItChoseFrom() {
        ChoiceStep step = (ChoiceStep) Trial.of("gauge-convert", "size=12 AWG").working().steps().get(3);
        assertEquals("2.5\u00a0mm²", step.candidates().get(0).name());
        // 2.5 ÷ 3.3088 = 0.7556; 4 ÷ 3.3088 = 1.2089
        assertEquals("24.4\u00a0% less copper", step.candidates().get(0).reason());
        assertEquals("20.9\u00a0% more copper", step.candidates().get(1).reason());
        assertTrue(step.candidates().get(1).taken());
    }

    @Test
    void givesTheDifferenceOfTheNearestMetricSize() {
        // (50 − 53.475) ÷ 53.475 = −6.50 %
        assertEquals(-6.50, Trial.of("gauge-convert", "size=1/0 AWG").value("metric-difference"), 0.005);
        assertEquals(0, Trial.of("gauge-convert", "size=2.5 mm2").value("metric-difference"), 1e-12);
    }

    @Test
    void readsSaeGaugeFromItsTable() {
        // 5833 circular mils × 0.000506707 mm² = 2.9556 mm²; 12 AWG has 3.3088 mm²: 10.67 % less
        Trial trial = Trial.of("gauge-convert", "size=12 AWG", "named-by=sae");
        assertEquals(2.9556, trial.value("area"), 0.0001);
        assertEquals(5833, trial.value("area-circular-mils"), 1e-6);
        assertEquals(10.67, trial.value("sae-shortfall"), 0.005);
        assertEquals(1.9399, trial.value("diameter"), 0.0005);
        assertEquals(13, trial.value("nearest-awg"), 1e-9);
        assertEquals(12, trial.value("next-larger-awg"), 1e-9);
    }

    @Test
    void comparesAnAwgWithTheSaeOfItsNumber() {
        Trial trial = Trial.of("gauge-convert", "size=12 AWG");
        assertEquals(2.9556, trial.value("sae-area"), 0.0001);
        assertEquals(10.67, trial.value("sae-shortfall"), 0.005);
        assertEquals(Verdict.CAUTION, trial.finding("12\u00a0SAE has 10.7\u00a0% less copper than 12\u00a0AWG").verdict());
    }

    @Test
    void leavesSaeOutWhereThereIsNone() {
        assertFalse(Trial.of("gauge-convert", "size=13 AWG").answers("sae-area"));
        assertFalse(Trial.of("gauge-convert", "size=2.5 mm2", "named-by=sae").answers("sae-shortfall"));
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource(delimiter = '|', textBlock = """
            12.5 AWG | awg | size: Size of conductor is 12.5 AWG: gauge numbers are whole, from 40 AWG to 1 AWG, then 1/0, 2/0, 3/0 and 4/0. Enter one of these, or an area in mm²
            13 AWG   | sae | size: Size 13 AWG (2.62 mm²) is not in this table, which lists SAE gauge numbers. Choose 14 AWG (thinner) or 12 AWG (thicker), or say that it is AWG
            16 mm    | awg | size: Size of conductor must be between 0.08 mm and 13.8 mm, but is 16 mm
            """)
    void refusesWhatIsNoSize(String size, String namedBy, String message) {
        assertEquals(message, Trial.of("gauge-convert", "size=" + size, "named-by=" + namedBy).refusal().replace('\u00a0', ' '));
    }

    @Test
    void warnsWhenTheNearestMetricSizeHasLessCopper() {
        Finding finding = Trial.of("gauge-convert", "size=1/0 AWG").finding("the nearest metric size");
        assertEquals(Verdict.CAUTION, finding.verdict());
        assertEquals(
                "The copper of the nearest metric size, 50 mm², is below that of 1/0 AWG (53.5 mm²) (6.5 % less copper), 53.5 mm².", finding.words().replace('\u00a0', ' '));
        assertTrue(finding.remedy().startsWith("Take 70\u00a0mm², or check"), finding.remedy());
        assertEquals(Verdict.PASSED, Trial.of("gauge-convert", "size=12 AWG").finding("the nearest metric size").verdict());
        assertFalse(Trial.of("gauge-convert", "size=2.5 mm2").hasFinding("metric"));
    }

    @Test
    void warnsOfAPrintedSubstituteWithLessCopper() {
        Finding finding = Trial.of("gauge-convert", "size=12 AWG").finding("A printed list");
        assertEquals(Verdict.CAUTION, finding.verdict());
        assertEquals("A printed list puts 2.5 mm² in place of 12 AWG: 24.4 % less copper.", finding.words().replace('\u00a0', ' '));
        assertFalse(Trial.of("gauge-convert", "size=14 AWG").hasFinding("A printed list"));
    }

    @Test
    void warnsWhenTheNearestGaugeHasLessCopper() {
        Finding finding = Trial.of("gauge-convert", "size=35 mm2").finding("the nearest AWG");
        assertEquals("The copper of the nearest AWG, 2 AWG, 33.6 mm², is below that of 35 mm² (3.91 % less copper), 35 mm².", finding.words().replace('\u00a0', ' '));
        assertTrue(finding.remedy().startsWith("Take 1\u00a0AWG"), finding.remedy());
        assertFalse(Trial.of("gauge-convert", "size=50 mm2").hasFinding("the nearest AWG"));
    }

    @ParameterizedTest(name = "{0} {1}: {3} for {2} is {4}")
    @CsvSource({
        // 12 AWG: d = 2.0525 mm
        "12 AWG, awg, area, 2.05 mm2, diameter-for-area",
        "12 AWG, awg, area, 4.213 mm2, square-for-circle",
        "12 AWG, awg, area, 13.24 mm2, diameter-as-radius",
        "12 AWG, awg, area, 0.827 mm2, radius-as-diameter",
        // 25 circular mils × 92^(24/39) = 25 × 16.16 = 404 circular mils
        "12 AWG, awg, area, 0.2047 mm2, ratio-of-diameters",
        "12 AWG, awg, area, 2.956 mm2, awg-as-sae",
        "12 AWG, sae, area, 3.31 mm2, sae-as-awg",
        "12 AWG, awg, area-circular-mils, 5129 cmil, square-mils",
        "12 AWG, awg, sae-shortfall, 11.95 %, share-of-sae",
        "12 AWG, awg, metric-difference, 17.28 %, share-of-metric",
        "12 AWG, awg, next-larger-metric, 2.5 mm2, thinner-size",
        "6 AWG, awg, next-larger-metric, 10 mm2, thinner-size",
        "2 mm, awg, area, 2 mm2, diameter-for-area",
        "2 mm, awg, area, 4 mm2, square-for-circle",
        "2.5 mm2, awg, diameter, 2.5 mm, area-for-diameter",
        "2.5 mm2, awg, diameter, 1.581 mm, side-of-square",
        "2.5 mm2, awg, diameter, 0.892 mm, radius-for-diameter",
        // 6500 square mils are 6500 × 0.00064516 mm² = 4.194 mm²
        "6500 circular mil, awg, area, 4.194 mm2, circular-as-square-mils"
    })
    void knowsTheSlip(String size, String namedBy, String asked, String answer, String slip) {
        assertEquals(slip, Trial.of("gauge-convert", "size=" + size, "named-by=" + namedBy).slipBehind(asked, answer));
    }

    @ParameterizedTest(name = "{0} {1}: {2}, {3}")
    @CsvSource({
        "12 AWG, awg, solid-copper, 12 AWG", "12 AWG, sae, sae-by-area, 12 AWG", "2.5 mm2, awg, copper-by-area, 2.5 mm²",
        "26 AWG, awg, copper-by-area, 0.1288 mm²"
    })
    void carriesTheSizeOn(String size, String namedBy, String kind, String carried) {
        var next = Trial.of("gauge-convert", "size=" + size, "named-by=" + namedBy).working().nextQuestions().get(0);
        assertEquals(kind, next.carried().get("conductor"));
        assertEquals(carried, next.carried().get("size").replace('\u00a0', ' '));
        assertTrue(Trial.of("conductor-resistance", "conductor=" + kind, "size=" + next.carried().get("size"), "length=1 m").value("resistance") > 0);
    }
}
