package loomwright.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.Outcome;
import loomwright.worked.QuantityField;
import loomwright.worked.Trial;
import loomwright.worked.Working;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitsTest {
    /** Lengths: 1 ft = 0.3048 m. Gauges: ASTM B258, 14 AWG 2.08 mm², 12 AWG 3.31 mm², 10 AWG 5.26 mm², 4/0 107.2 mm². */
    @ParameterizedTest(name = "{0} becomes {2}")
    @CsvSource({
        "4.2 m, ft, 13.8 ft", "14 ft, m, 4.27 m", "40 °C, °F, 104 °F", "2.5 mm², AWG, 12 AWG", "4 mm², AWG, 10 AWG", "70 mm², AWG, 3/0 AWG",
        "14 AWG, mm², 2.5 mm²", "12 AWG, mm², 4 mm²", "2/0 AWG, mm², 70 mm²", "12 mm, in, 0.472 in"
    })
    void aFigureIsConvertedAndASizeBecomesOneThatIsSoldWithAsMuchCopper(String from, String unit, String expected) {
        assertEquals(expected, Converted.text(QuantityText.read(from, null).quantity(), unit(unit)).replace('\u00a0', ' '));
    }

    private static Unit unit(String symbol) {
        return Units.all().stream().filter(each -> each.symbol().equals(symbol)).findFirst().orElseThrow();
    }

    @Test
    void whatMeasuresAnotherThingOrIsThickerThanAnySizeHasNoFigureThere() {
        assertNull(Converted.text(Quantity.of(480, Units.WATT_HOUR), Units.AMPERE_HOUR));
        assertNull(Converted.text(Quantity.of(150, Units.SQUARE_MILLIMETRE), Units.AWG), "4/0 AWG has 107.2 mm²");
    }

    /** No conductor gets thinner on the way there, and every sized kind takes the size that it is given. */
    @Test
    void everySoldSizeLeadsToOneThatTheOtherKindListsAndCarriesAsMuch() {
        Calculator calculator = Catalogue.find("voltage-drop");
        ChoiceField kinds = (ChoiceField) calculator.description().field("conductor");
        for (String size : new String[] {"0.5", "0.75", "1", "1.5", "2.5", "4", "6", "10", "16", "25", "35", "50", "70", "95"}) {
            Quantity metric = QuantityText.read(size + " mm²", null).quantity();
            Quantity gauge = QuantityText.read(Converted.text(metric, Units.AWG), null).quantity();
            assertTrue(gauge.base() >= metric.base() * 0.999999, size);
            Map<String, String> typed = new HashMap<>(Map.of("current", "1 A", "route-length", "1 m"));
            typed.put("size", gauge.text());
            typed.put("conductor", Converted.kind(kinds, "iso-6722-1", Units.AWG));
            assertEquals("nec-stranded", typed.get("conductor"));
            Outcome outcome = Outcome.of(calculator, typed);
            assertTrue(outcome.faults().isEmpty(), outcome.faults().toString());
        }
        assertEquals("iso-6722-1", Converted.kind(kinds, "solid-copper", Units.SQUARE_MILLIMETRE));
        assertEquals("copper-by-area", Converted.kind(kinds, "copper-by-area", Units.AWG));
    }

    /** 10 AWG has 5.26 mm²: the first sold size with as much is 6 mm², which that rule set lists. 14 AWG has 2.08 mm²: 2.5 mm². The military column lists gauges alone. */
    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({"iec-60352-2, 10 AWG, mm², 6 mm²", "iec-60352-2, 14 AWG, mm², 2.5 mm²", "abyc, 6 mm², AWG, 3 AWG", "military, 12 AWG, mm²,", "abyc, 10 AWG, mm²,", "abyc, 95 mm², AWG, 4/0 AWG"})
    void aSizeIsChosenFromThoseThatTheRuleSetLists(String ruleSet, String from, String unit, String expected) {
        Calculator calculator = Catalogue.find("pull-force");
        Map<String, String> typed = Map.of("rule-set", ruleSet, "size", from);
        String found = Converted.taken(calculator, typed, "size", QuantityText.read(from, null).quantity(), unit(unit));
        assertEquals(expected, found == null ? null : found.replace('\u00a0', ' '));
    }

    @Test
    void whatAFieldHoldsOpensInTheUnitsOfTheReaderAndACableStaysWhatItIsMarkedWith() {
        List<Field> fields = Catalogue.find("voltage-drop").description().fields();
        assertEquals("13.8\u00a0ft", Shown.text(UnitSystem.AMERICAN, named(fields, "route-length"), "4.2 m"));
        assertEquals("4.2 m", Shown.text(UnitSystem.METRIC, named(fields, "route-length"), "4.2 m"));
        assertEquals("2.5 mm²", Shown.text(UnitSystem.AMERICAN, named(fields, "size"), "2.5 mm²"));
        assertEquals("four", Shown.text(UnitSystem.AMERICAN, named(fields, "route-length"), "four"));
        assertSame(Units.FEET, ((QuantityField) Shown.field(UnitSystem.AMERICAN, named(fields, "route-length"), "")).units().get(0));
    }

    private static Field named(List<Field> fields, String key) {
        return fields.stream().filter(each -> each.key().equals(key)).findFirst().orElseThrow();
    }

    @Test
    void resultsFollowAndSizesStayWhatTheyAreSoldAs() {
        Working metric = Trial.of("size-for-run", "current=10 A", "route-length=4.2 m", "rule-set=drop-only").working();
        Working shown = Shown.in(UnitSystem.AMERICAN, metric);
        assertSame(Units.SQUARE_MILLIMETRE, shown.result("chosen-size").quantity().unit());
        assertSame(Units.OHM_PER_THOUSAND_FEET, shown.result("highest-resistance-per-metre").quantity().unit());
        assertSame(metric, Shown.in(UnitSystem.METRIC, metric));
    }

    /** Fractions of an inch: 3/4 in is 19.05 mm, 1 1/2 in is 38.1 mm. */
    @ParameterizedTest(name = "{0} is read as {1} mm")
    @CsvSource({"3/4 in, 19.05", "1 1/2 in, 38.1", "1-1/2\", 38.1", "½ in, 12.7"})
    void fractionsOfAnInchAreRead(String typed, double millimetres) {
        assertEquals(millimetres, QuantityText.read(typed, Units.MILLIMETRE).quantity().in(Units.MILLIMETRE).value(), 1e-9);
    }

    @Test
    void aFamilyIsFoundByItsNameAndElseItIsMetric() {
        assertSame(UnitSystem.AMERICAN, UnitSystem.of(UnitSystem.AMERICAN.key()));
        assertSame(UnitSystem.METRIC, UnitSystem.of(UnitSystem.METRIC.key()));
        assertSame(UnitSystem.METRIC, UnitSystem.of("imperial"));
        assertSame(UnitSystem.METRIC, UnitSystem.of(null));
        assertEquals("american", UnitSystem.AMERICAN.key());
    }

    @Test
    void eachFamilyHasItsOwnUnitInThePlaceOfTheOther() {
        assertSame(Units.FEET, UnitSystem.AMERICAN.inPlaceOf(Units.METRE));
        assertSame(Units.METRE, UnitSystem.METRIC.inPlaceOf(Units.FEET));
        assertSame(Units.FAHRENHEIT, UnitSystem.AMERICAN.inPlaceOf(Units.CELSIUS));
        assertSame(Units.CELSIUS, UnitSystem.METRIC.inPlaceOf(Units.FAHRENHEIT));
        assertSame(Units.VOLT, UnitSystem.AMERICAN.inPlaceOf(Units.VOLT));
        assertSame(Units.METRE, UnitSystem.AMERICAN.inPlaceOf(Units.METRE, List.of(Units.METRE)), "feet are not offered");
    }
}
