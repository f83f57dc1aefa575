package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Units;
import loomwright.worked.Finding;
import loomwright.worked.Sentence;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarryingCapacityTest {
    private static final Quantity TWELVE_VOLTS = Quantity.of(12, Units.VOLT);

    private static CarryingCapacity capacity(String size, AmpacityRuleSet rules, Insulation insulation, String ambient, int together) {
        Quantity warmth = ambient.isEmpty() ? null : QuantityText.read(ambient, null).quantity();
        return CarryingCapacity.of(
                QuantityText.read(size, null).quantity(), rules, new Surroundings(insulation, false, warmth, together, TWELVE_VOLTS));
    }

    /**
     * Typed from 33 CFR 183.425 Table 5 and its note 2, from the NEC's factors on a base of 30 °C, from FAA Table 11-9 and from BS 7671
     * Table 4F3A; the products are exact.
     */
    @ParameterizedTest(name = "{0} by {1}, {2}, {3}, {4} together: {5} A, {6}")
    @CsvSource({
        "12 AWG,   BOAT,     T60,  30 °C, 2, 25,    RATED",
        "2.5 mm2,  BOAT,     T60,  30 °C, 2, 20,    RATED", // 14 AWG stands in
        "12 AWG,   BOAT,     T60,  40 °C, 2, 20.5,  RATED", // 25 × 0.82
        "12 AWG,   BOAT,     T60,  55 °C, 2, 10.25, RATED", // 25 × 0.41
        "12 AWG,   BOAT,     T60,  56 °C, 2, 10.25, AT_MOST", // warmer than the warmest row
        "12 AWG,   BOAT,     T60,  60 °C, 2, 0,     NOTHING",
        "12 AWG,   BOAT,     T80,  40 °C, 2, 30.8,  RATED", // 35 × 0.88, the factor for 75 °C
        "12 AWG,   BOAT,     T105, 40 °C, 2, 40.95, RATED", // 45 × 0.91, the factor for 90 °C
        "12 AWG,   BOAT,     T150, 30 °C, 2, 50,    RATED", // the column of 125 °C
        "12 AWG,   BOAT,     T60,  30 °C, 3, 17.5,  RATED", // 25 × 0.70
        "12 AWG,   BOAT,     T60,  30 °C, 6, 15,    RATED", // 25 × 0.60
        "12 AWG,   BOAT,     T60,  30 °C, 24, 12.5, RATED", // 25 × 0.50
        "12 AWG,   BOAT,     T60,  30 °C, 25, 10,   RATED", // 25 × 0.40
        "12 AWG,   BOAT,     T60,  40 °C, 6, 12.3,  RATED", // 25 × 0.82 × 0.60
        "0.75 mm2, BOAT,     T60,  30 °C, 2, 6,     RATED", // cord
        "0.75 mm2, BOAT,     T60,  40 °C, 2, 4.92,  RATED", // cord 6 × 0.82
        "0.5 mm2,  BOAT,     T60,  30 °C, 2, 3,     RATED", // cord
        "20 AWG,   BOAT,     T60,  30 °C, 2, 3,     RATED", // cord of 0.5 mm², which is thinner than 20 AWG
        "20 AWG,   BOAT,     T105, 30 °C, 2, 4,     RATED", // aircraft bundle
        "22 AWG,   BOAT,     T105, 30 °C, 2, 3,     RATED", // aircraft bundle; no cord is as thin
        "0.35 mm2, BOAT,     T60,  30 °C, 2, 3,     AT_MOST", // thinner than the cord of 0.5 mm²
        "0.75 mm2, BOAT,     T60,  30 °C, 4, 3.6,   AT_MOST", // no factor for more cords together: 6 × 0.60 of 33 CFR stands in
        "12 AWG,   AIRCRAFT, T60,  30 °C, 2, 13,    AT_MOST", // the table begins at 105 °C
        "12 AWG,   AIRCRAFT, T105, 71 °C, 2, 13,    AT_MOST",
        "8 AWG,    AIRCRAFT, T105, 70 °C, 10, 19,   AT_MOST", // nine together; 38 × 0.50 of 33 CFR stands in
        "12 AWG,   FREE_AIR, T105, 30 °C, 1, 40,    RATED", // the column of 90 °C
        "2.5 mm2,  FREE_AIR, T60,  30 °C, 1, 25,    RATED", // 14 AWG
        "12 AWG,   FREE_AIR, T60,  30 °C, 4, 18,    AT_MOST", // 30 × 0.60 of 33 CFR stands in
        "6 mm2,    TOWING,   T60,  30 °C, 2, 25.5,  RATED", // 3 mm²
        "1 mm2,    TOWING,   T60,  31 °C, 2, 8.75,  AT_MOST",
        "2.5 mm2,  CORD,     T90,  55 °C, 2, 24,    RATED", // 25 × 0.96
        "2.5 mm2,  CORD,     T75,  40 °C, 2, 20.5,  RATED", // the column of 60 °C
    })
    void everyConductorHasAFigure(
            String size, AmpacityRuleSet rules, Insulation insulation, String ambient, int together, double amperes, CarryingCapacity.Kind kind) {
        CarryingCapacity capacity = capacity(size, rules, insulation, ambient, together);
        assertEquals(amperes, capacity.value().value(), 1e-9, capacity.words());
        assertEquals(kind, capacity.kind(), capacity.words());
    }

    @Test
    void anEngineSpaceCountsAsFiftyDegreesByTheOwnFactorOf33Cfr() {
        Surroundings engine = new Surroundings(Insulation.T105, true, null, 6, TWELVE_VOLTS);
        // 45 A × 0.85 × 0.60
        assertEquals(22.95, CarryingCapacity.of(Quantity.of(12, Units.AWG), AmpacityRuleSet.BOAT, engine).value().value(), 1e-9);
    }

    @Test
    void aDeviceAboveWhatAThickerWireCarriesIsAStop() {
        Finding stop = capacity("0.35 mm2", AmpacityRuleSet.BOAT, Insulation.T75, "30 °C", 2).judgeRating("Fuse F1", amperes(5), Sentence.of("Take 2 A."));
        assertEquals(Verdict.STOP, stop.verdict());
        assertEquals("Fuse F1, 5 A, is above what 0.35 mm² carries at most, 3 A.", plain(stop.words()));
        assertEquals("Take 2 A.", stop.remedy());
    }

    @Test
    void aDeviceBelowItIsNotKnown() {
        Finding finding = capacity("0.35 mm2", AmpacityRuleSet.BOAT, Insulation.T75, "30 °C", 2).judgeRating("Fuse F1", amperes(2), Sentence.of(""));
        assertEquals(Verdict.NOT_KNOWN, finding.verdict());
        assertTrue(plain(finding.words()).startsWith("Fuse F1, 2 A, is below 3 A, but 0.35 mm² carries less than that."), finding.words());
        assertTrue(finding.missing().where().contains("data sheet of the cable"));
    }

    @Test
    void aRatedConductorPassesUpToItsFigureAndSaysWhatIsAssumed() {
        CarryingCapacity capacity = capacity("12 AWG", AmpacityRuleSet.BOAT, Insulation.T60, "40 °C", 2);
        assertEquals(Verdict.PASSED, capacity.judgeRating("Fuse F1", amperes(20.5), Sentence.of("")).verdict());
        assertEquals(Verdict.STOP, capacity.judgeRating("Fuse F1", amperes(20.6), Sentence.of("")).verdict());
        // within 5 % of 20.5 A
        assertEquals(Verdict.CAUTION, capacity.judge("The current", amperes(20), "").verdict());
        Finding passed = capacity.judge("The current", amperes(12), "");
        assertEquals(Verdict.PASSED, passed.verdict());
        assertEquals(
                "Assuming insulation for 60 °C and 40 °C around it: The current, 12 A, is within the ampacity of 12 AWG (25 A × 0.82), 20.5 A.",
                plain(passed.words()));
    }

    @Test
    void nothingMayFlowWhereItIsAsWarmAsTheInsulation() {
        Finding stop = capacity("12 AWG", AmpacityRuleSet.BOAT, Insulation.T60, "65 °C", 2).judge("The current", amperes(0.1), "");
        assertEquals(Verdict.STOP, stop.verdict());
    }

    private static Quantity amperes(double value) {
        return Quantity.of(value, Units.AMPERE);
    }

    private static String plain(String words) {
        return words.replace('\u00a0', ' ');
    }
}
