package loomwright.generator;

import java.util.List;
import java.util.Map;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Standing;
import loomwright.table.Table;
import loomwright.table.TableReader;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/** Small calculators for the tests of the generator, so that its pages do not change with the real ones. */
public final class TestCalculators {
    private TestCalculators() {}

    public static List<Calculator> all() {
        return List.of(new ResistorCurrent(), new RodResistance());
    }

    /** Current and power of a resistance. */
    private static final class ResistorCurrent implements Calculator {
        private static final Symbol VOLTAGE = Symbol.of("U", "voltage", Dimension.VOLTAGE);
        private static final Symbol RESISTANCE = Symbol.of("R", "resistance", Dimension.RESISTANCE);
        private static final Symbol CURRENT = Symbol.of("I", "current", Dimension.CURRENT);
        private static final Symbol POWER = Symbol.of("P", "power", Dimension.POWER);
        private static final Formula CURRENT_FORMULA = new Formula(CURRENT, VOLTAGE.over(RESISTANCE));
        private static final Formula POWER_FORMULA = new Formula(POWER, VOLTAGE.times(CURRENT));
        private static final Formula WRONG_CURRENT = new Formula(CURRENT, VOLTAGE.over(RESISTANCE.times(2)));

        @Override
        public Description description() {
            return new Description(
                    "resistor-current",
                    "Current of a resistance",
                    "How much current does a resistance take?",
                    List.of("The resistance does not change as it warms"),
                    List.of(
                            QuantityField.of("voltage", "Voltage", "Across the resistance.", 0.1, 100, Units.VOLT),
                            QuantityField.of("resistance", "Resistance", "", 0.1, 1000, Units.OHM),
                            ChoiceField.of(
                                    "kind", "Kind", "", new Option("wire", "wound of wire"), new Option("film", "a film on a rod"))),
                    List.of(new Output("current", "Current", Units.AMPERE), new Output("power", "Power", Units.WATT)),
                    List.of(new NamedFormula("current", CURRENT_FORMULA)));
        }

        @Override
        public void work(Entries entries, WorkingBuilder working) {
            Values values = Values.of(VOLTAGE, entries.quantity("voltage")).with(RESISTANCE, entries.quantity("resistance"));
            Quantity current = working.compute("Divide the volts by the ohms", CURRENT_FORMULA, values, Units.AMPERE, "Ohm's law");
            if (current.value() > 500) {
                throw new Refusal("resistance", "Resistance is too small here: more than 500 A would flow");
            }
            Quantity power = working.compute(
                    "Multiply volts and amperes", POWER_FORMULA, values.with(CURRENT, current), Units.WATT, "Power is both together");
            working.result("current", current);
            working.result("power", power);
            working.slip("halved", "current", "Counted twice", "The resistance is there once.", WRONG_CURRENT, values);
            working.next("rod-resistance", "What resistance has a rod?", Map.of("size", "2 mm2"));
        }
    }

    /** Resistance of a rod from a table. */
    private static final class RodResistance implements Calculator {
        private static final Symbol RESISTANCE = Symbol.of("r", "resistance of one metre", Dimension.RESISTANCE_PER_LENGTH);
        private static final Table RODS = TableReader.read(
                "rods",
                "# title: Resistance of rods\n# source: rod-book\nsize (mm²),resistance (mΩ/m),standing\n1,18,\n2,9,\n4,4.5,from-memory\n",
                List.of(new Document("rod-book", "The rod makers", "The Rod Book", "2001", Standing.PUBLISHED, "the book", "")));

        @Override
        public Description description() {
            return new Description(
                    "rod-resistance",
                    "Resistance of a rod",
                    "What resistance has one metre of a rod?",
                    List.of(),
                    List.of(QuantityField.of("size", "Cross-section", "", 0.5, 10, Units.SQUARE_MILLIMETRE)),
                    List.of(new Output("resistance", "Resistance of one metre", Units.MILLIOHM_PER_METRE)),
                    List.of());
        }

        @Override
        public void work(Entries entries, WorkingBuilder working) {
            var row = RODS.find("size", entries.quantity("size"));
            if (row == null) {
                throw new Refusal("size", "Cross-section is not in the table: enter 1 mm², 2 mm² or 4 mm²");
            }
            working.result("resistance", working.lookUp("Look up the rod", RESISTANCE, row, "resistance", "One metre of it"));
        }
    }
}
