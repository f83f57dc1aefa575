package loomwright.joint;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.Comparison;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * Whether a heat-shrink tube slips over a joint and then grips the cable, and how long to cut it.
 *
 * <p>Shrunk diameter = supplied diameter ÷ ratio. The supplied diameter must exceed the joint, the shrunk one must be below the cable.
 *
 * @source table heat-shrink
 */
public final class ShrinkSize implements Calculator {
    private static final ChoiceField RATIO = ChoiceField.of(
            "ratio", "Ratio of the tube", "Printed on the tube or its bag.", new Option("2:1", "2 to 1"), new Option("3:1", "3 to 1"));
    private static final QuantityField SUPPLIED = QuantityField.of(
            "supplied", "Diameter of the tube as supplied", "Inside, before it is shrunk: the number it is sold by.", 0.5, 150,
            Units.MILLIMETRE, Units.INCHES);
    private static final QuantityField JOINT = QuantityField.of(
            "joint-diameter", "Largest diameter it must slip over", "The joint or terminal barrel at its thickest.", 0.3, 150,
            Units.MILLIMETRE, Units.INCHES);
    private static final QuantityField CABLE = QuantityField.of(
            "cable-diameter", "Smallest diameter it must grip", "The outside of the cable's insulation.", 0.3, 150, Units.MILLIMETRE, Units.INCHES);
    private static final QuantityField COVER = QuantityField.of(
                    "cover-length", "Length to be covered", "Joint and a grip on the insulation at both ends.", 1, 1000, Units.MILLIMETRE, Units.INCHES)
            .usually("30 mm");

    private static final Symbol SUPPLIED_SYMBOL = Symbol.of("d", "diameter of the tube as supplied", Dimension.LENGTH);
    private static final Symbol DIVISOR = Symbol.of("n", "ratio of the tube", Dimension.NUMBER);
    private static final Symbol SHRUNK = Symbol.of("d", "s", "diameter of the tube when shrunk", Dimension.LENGTH);
    private static final Symbol GRIPPED = Symbol.of("d", "c", "diameter of the cable", Dimension.LENGTH);
    private static final Symbol LARGEST = Symbol.of("d", "max", "largest tube that still grips", Dimension.LENGTH);
    private static final Symbol COVERED = Symbol.of("l", "c", "length to be covered", Dimension.LENGTH);
    private static final Symbol CUT = Symbol.of("l", "length to cut", Dimension.LENGTH);

    private static final Formula SHRUNK_DIAMETER = new Formula(SHRUNK, SUPPLIED_SYMBOL.over(DIVISOR));
    private static final Formula LARGEST_SUPPLIED = new Formula(LARGEST, GRIPPED.times(DIVISOR));
    private static final Formula CUT_LENGTH =
            new Formula(CUT, COVERED.over(Expression.number(1).minus(Expression.fixed(Quantity.of(15, Units.PERCENT)))));
    private static final Formula SHRUNK_BY_RATIO_LESS_ONE =
            new Formula(SHRUNK, SUPPLIED_SYMBOL.minus(SUPPLIED_SYMBOL.over(DIVISOR)));
    private static final Formula SHRUNK_IN_AREA = new Formula(SHRUNK, SUPPLIED_SYMBOL.over(DIVISOR.squareRoot()));
    private static final Formula CUT_BY_ADDING =
            new Formula(CUT, COVERED.times(Expression.number(1).minus(Expression.fixed(Quantity.of(15, Units.PERCENT)))));
    private static final Formula SUPPLIED_HALVED = new Formula(LARGEST, GRIPPED.over(DIVISOR));

    private static final Description DESCRIPTION = new Description(
            "shrink-size",
            "Heat-shrink tube",
            "Does this heat-shrink tube slip over the joint and grip the cable?",
            List.of(
                    "The tube is shrunk fully and evenly. It also gets shorter, by 5 % to 15 %: the cut length allows for 15 %.",
                    "Heat-shrink protects a joint; it does not hold it together."),
            List.of(RATIO, SUPPLIED, JOINT, CABLE, COVER),
            List.of(
                    new Output("shrunk-diameter", "Diameter when shrunk", Units.MILLIMETRE),
                    new Output("largest-supplied", "Largest tube that still grips", Units.MILLIMETRE),
                    new Output("cut-length", "Length to cut", Units.MILLIMETRE)),
            List.of(
                    new NamedFormula("shrunk-diameter", SHRUNK_DIAMETER),
                    new NamedFormula("largest-supplied", LARGEST_SUPPLIED),
                    new NamedFormula("cut-length", CUT_LENGTH)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Row row = PublishedTables.heatShrink().row(entries.choice(RATIO.key()));
        Quantity divisor = row.quantity("divisor", Units.ONE);
        Quantity supplied = entries.quantity(SUPPLIED.key());
        Quantity cable = entries.quantity(CABLE.key());
        Values values = Values.of(SUPPLIED_SYMBOL, supplied)
                .with(DIVISOR, divisor)
                .with(GRIPPED, cable)
                .with(COVERED, entries.quantity(COVER.key()));
        Quantity shrunk = working.compute(
                "Divide the supplied diameter by the ratio", SHRUNK_DIAMETER, values, supplied.unit(),
                "The ratio says how far it shrinks.", row.source());
        Quantity largest = working.compute(
                "Find the largest tube that still grips this cable", LARGEST_SUPPLIED, values, cable.unit(),
                "Shrunk fully it must be no wider than the cable.");
        Quantity cut = working.compute(
                "Allow for the tube getting shorter", CUT_LENGTH, values, entries.quantity(COVER.key()).unit(),
                "It loses up to 15 % of its length.", PublishedTables.heatShrink().row("3:1").source());
        working.result("shrunk-diameter", shrunk);
        working.result("largest-supplied", largest);
        working.result("cut-length", cut);
        addFindings(working, supplied, shrunk, entries.quantity(JOINT.key()), cable, row.source());
        working.slip(
                "ratio-as-loss", "shrunk-diameter", "The part that goes used in place of the part that stays",
                "The ratio is what you divide by.", SHRUNK_BY_RATIO_LESS_ONE, values);
        working.slip(
                "ratio-of-areas", "shrunk-diameter", "The ratio taken as one of areas",
                "The ratio is one of diameters.", SHRUNK_IN_AREA, values);
        working.slip(
                "ratio-turned-over", "largest-supplied", "Divided by the ratio where you multiply",
                "The tube before shrinking is the larger of the two.", SUPPLIED_HALVED, values);
        working.slip(
                "shortening-turned-over", "cut-length", "The shortening taken off instead of allowed for",
                "Cut it longer, so that what is left covers the joint.", CUT_BY_ADDING, values);
    }

    private static void addFindings(
            WorkingBuilder working, Quantity supplied, Quantity shrunk, Quantity joint, Quantity cable, Source source) {
        working.finding(Comparison.of("The tube as supplied", supplied)
                .atLeast(joint, "the joint that it has to slip over", source)
                .exact()
                .otherwise(Verdict.STOP, "Take a wider tube, and put it on before you make the joint.")
                .finding());
        working.finding(Comparison.of("The tube when shrunk", shrunk)
                .atMost(cable, "the cable that it has to grip", source)
                .exact()
                .otherwise(Verdict.STOP, "Take a narrower tube, or one of 3 to 1.")
                .finding());
    }
}
