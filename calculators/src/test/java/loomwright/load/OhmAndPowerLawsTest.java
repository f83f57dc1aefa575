package loomwright.load;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.NamedFormula;
import loomwright.worked.Trial;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class OhmAndPowerLawsTest {
    private static final double ROUNDED = 1e-6;

    /** One consistent set of four, entered two at a time, gives the same set every time. */
    @Property(tries = 200)
    void everyPairTellsTheSameStory(
            @ForAll @DoubleRange(min = 1, max = 900) double volts, @ForAll @DoubleRange(min = 1, max = 900) double amperes) {
        Map<String, Double> truth =
                Map.of("voltage", volts, "current", amperes, "resistance", volts / amperes, "power", volts * amperes);
        List<String> keys = List.of("voltage", "current", "resistance", "power");
        for (String first : keys) {
            for (String second : keys) {
                if (!first.equals(second)) {
                    Trial trial = Trial.of("ohm-and-power", typed(first, truth), typed(second, truth));
                    for (String key : keys) {
                        assertEquals(1, trial.value(key) / truth.get(key), ROUNDED, () -> first + " " + second + " " + key);
                    }
                }
            }
        }
    }

    @Property(tries = 100)
    void everyNamedFormulaHolds(
            @ForAll @DoubleRange(min = 0.1, max = 100) double volts, @ForAll @DoubleRange(min = 0.1, max = 100) double amperes) {
        Values values = Values.of(OhmSymbols.VOLTAGE, Quantity.of(volts, Units.VOLT))
                .with(OhmSymbols.CURRENT, Quantity.of(amperes, Units.AMPERE))
                .with(OhmSymbols.RESISTANCE, Quantity.of(volts / amperes, Units.OHM))
                .with(OhmSymbols.POWER, Quantity.of(volts * amperes, Units.WATT));
        for (NamedFormula named : OhmFormulas.NAMED) {
            Formula formula = named.formula();
            Symbol subject = formula.subject();
            double expected = values.of(subject).base();
            assertEquals(1, formula.body().base(values) / expected, 1e-12, named.key());
        }
    }

    private static String typed(String key, Map<String, Double> truth) {
        return key + "=" + String.format(Locale.ROOT, "%.9f", truth.get(key));
    }
}
