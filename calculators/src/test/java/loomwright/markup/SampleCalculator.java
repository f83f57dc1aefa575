package loomwright.markup;

import java.util.List;
import java.util.Map;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.source.Standing;
import loomwright.table.Row;
import loomwright.table.TableReader;
import loomwright.worked.Calculator;
import loomwright.worked.Candidate;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** A calculator with one step of each kind. Its numbers mean nothing. */
final class SampleCalculator implements Calculator {
    static final Document BOOK = new Document("book", "Issuer", "A book <of> tables", "2001", Standing.PUBLISHED, "", "");

    private static final Symbol CURRENT = Symbol.of("I", "current", Dimension.CURRENT);
    private static final Symbol RESISTANCE = Symbol.of("R", "c", "resistance of the run", Dimension.RESISTANCE);
    private static final Symbol DROP = Symbol.of("U", "voltage drop", Dimension.VOLTAGE);
    private static final Formula DROP_FORMULA = new Formula(DROP, CURRENT.times(RESISTANCE));
    private static final Formula DOUBLED = new Formula(DROP, CURRENT.times(RESISTANCE).times(2));

    private static final QuantityField CURRENT_FIELD = QuantityField.of(
            "current", "Design current", "What the load draws.", 0.01, 1000, Units.AMPERE, Units.MILLIAMPERE);
    private static final QuantityField SIZE_FIELD =
            QuantityField.of("size", "Size", "", 0.1, 200, Units.SQUARE_MILLIMETRE, Units.AWG);
    private static final QuantityField TEMPERATURE_FIELD =
            QuantityField.of("temperature", "Temperature", "Of the conductor.", -40, 200, Units.CELSIUS).usually("20 °C");
    private static final QuantityField SPARE_FIELD =
            QuantityField.of("spare", "Spare length", "", 0, 10, Units.METRE, Units.FEET).optional();

    @Override
    public Description description() {
        ChoiceField counts = ChoiceField.of(
                "counts", "The length is", "", new Option("one-way", "one way"), new Option("both", "out & back"));
        return new Description(
                "sample",
                "Sample",
                "What is the drop?",
                List.of("The load takes a steady current"),
                List.of(CURRENT_FIELD, SIZE_FIELD, TEMPERATURE_FIELD, SPARE_FIELD, counts),
                List.of(new Output("resistance", "Resistance", Units.OHM), new Output("drop", "Voltage drop", Units.VOLT)),
                List.of(new NamedFormula("drop", DROP_FORMULA)));
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        String csv = "# title: T\n# source: book\n# locus: Table 5\nsize (mm²),resistance (mΩ)\n2.5,50\n";
        Row row = TableReader.read("t", csv, List.of(BOOK)).rows().get(0);
        Quantity current = working.convert("Bring the current to amperes", entries.quantity("current"), Units.AMPERE, "");
        Quantity resistance = working.lookUp("Look the resistance up", RESISTANCE, row, "resistance", "It is printed");
        Values values = Values.of(CURRENT, current).with(RESISTANCE, resistance);
        Quantity drop = working.compute("Multiply", DROP_FORMULA, values, Units.VOLT, "Ohm's law");
        working.choose(
                "Take the next size",
                List.of(new Candidate("5 A", false, "too small"), new Candidate("10 A", true, "large enough")),
                Quantity.of(10, Units.AMPERE),
                "",
                Source.commonPractice());
        working.result("resistance", resistance);
        working.result("drop", drop);
        working.finding(new Finding(Verdict.PASSED, "The drop is small", drop, null, Source.of(BOOK, "page 3"), ""));
        working.finding(new Finding(Verdict.STOP, "It is hot", drop, null, Source.of(BOOK, ""), "Use a larger size"));
        working.slip("doubled", "drop", "Counted twice", "The resistance already counts both ways", DOUBLED, values);
        working.next("fuse-choice", "Which fuse-link?", Map.of("size", "2.5 mm²"));
    }
}
