package loomwright.proving;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The letters and formulas of readings under load. */
final class ReadingSymbols {
    static final Symbol AT_SUPPLY = Symbol.of("U", "s", "voltage at the supply under load", Dimension.VOLTAGE);
    static final Symbol CURRENT = Symbol.of("I", "current while measuring", Dimension.CURRENT);
    static final Symbol CONDUCTORS = Symbol.of("R", "c", "resistance of the conductors, out and back", Dimension.RESISTANCE);
    static final Symbol PARTS = Symbol.of("R", "p", "resistance of fuse-links, switches and joints on the way", Dimension.RESISTANCE);
    static final Symbol EXPECTED = Symbol.of("U", "e", "expected reading", Dimension.VOLTAGE);
    static final Symbol MEASURED = Symbol.of("U", "m", "reading of the meter", Dimension.VOLTAGE);
    static final Symbol UNCERTAINTY = Symbol.of("u", "what the meter may be wrong by", Dimension.VOLTAGE);
    static final Symbol ACCURACY = Symbol.of("a", "accuracy of the meter", Dimension.NUMBER);
    static final Symbol RESOLUTION = Symbol.of("d", "last digit of the meter", Dimension.VOLTAGE);
    static final Symbol DIFFERENCE = Symbol.of("U", "diff", "expected reading less the meter's", Dimension.VOLTAGE);
    static final Symbol LIGHT_CURRENT = Symbol.of("I", "1", "current of the first reading", Dimension.CURRENT);
    static final Symbol HEAVY_CURRENT = Symbol.of("I", "2", "current of the second reading", Dimension.CURRENT);
    static final Symbol LIGHT_VOLTAGE = Symbol.of("U", "1", "voltage of the first reading", Dimension.VOLTAGE);
    static final Symbol HEAVY_VOLTAGE = Symbol.of("U", "2", "voltage of the second reading", Dimension.VOLTAGE);
    static final Symbol FOUND = Symbol.of("R", "resistance found between supply and point", Dimension.RESISTANCE);
    static final Symbol KNOWN = Symbol.of("R", "k", "resistance that ought to be there", Dimension.RESISTANCE);
    static final Symbol HIDDEN = Symbol.of("R", "h", "hidden resistance", Dimension.RESISTANCE);
    static final Symbol DESIGN_CURRENT = Symbol.of("I", "d", "design current", Dimension.CURRENT);
    static final Symbol HIDDEN_HEAT = Symbol.of("P", "h", "heat in the hidden resistance at the design current", Dimension.POWER);
    static final Symbol HIDDEN_DROP = Symbol.of("U", "h", "drop of the hidden resistance at the design current", Dimension.VOLTAGE);

    static final Formula EXPECTED_READING =
            new Formula(EXPECTED, AT_SUPPLY.minus(CURRENT.times(CONDUCTORS.plus(PARTS))));
    static final Formula METER_UNCERTAINTY = new Formula(UNCERTAINTY, ACCURACY.times(EXPECTED).plus(RESOLUTION));
    static final Formula READING_DIFFERENCE = new Formula(DIFFERENCE, EXPECTED.minus(MEASURED));
    static final Formula HIDDEN_FROM_DIFFERENCE = new Formula(HIDDEN, DIFFERENCE.over(CURRENT));
    static final Formula FROM_TWO_READINGS =
            new Formula(FOUND, LIGHT_VOLTAGE.minus(HEAVY_VOLTAGE).over(HEAVY_CURRENT.minus(LIGHT_CURRENT)));
    static final Formula LESS_KNOWN = new Formula(HIDDEN, FOUND.minus(KNOWN));
    static final Formula HEAT = new Formula(HIDDEN_HEAT, DESIGN_CURRENT.squared().times(HIDDEN));
    static final Formula DROP = new Formula(HIDDEN_DROP, DESIGN_CURRENT.times(HIDDEN));

    static final Formula SLIP_ONE_WAY = new Formula(
            EXPECTED, AT_SUPPLY.minus(CURRENT.times(CONDUCTORS.over(Expression.number(2)).plus(PARTS))));
    static final Formula SLIP_PARTS_FORGOTTEN = new Formula(EXPECTED, AT_SUPPLY.minus(CURRENT.times(CONDUCTORS)));
    static final Formula SLIP_DROP_ADDED = new Formula(EXPECTED, AT_SUPPLY.plus(CURRENT.times(CONDUCTORS.plus(PARTS))));
    static final Formula SLIP_FIRST_CURRENT_IGNORED =
            new Formula(FOUND, LIGHT_VOLTAGE.minus(HEAVY_VOLTAGE).over(HEAVY_CURRENT));
    static final Formula SLIP_SECOND_READING_ONLY = new Formula(FOUND, HEAVY_VOLTAGE.over(HEAVY_CURRENT));
    static final Formula SLIP_ALL_HIDDEN = new Formula(HIDDEN, FOUND);
    static final Formula SLIP_NOT_SQUARED = new Formula(
            HIDDEN_HEAT,
            DESIGN_CURRENT.times(HIDDEN).times(Expression.fixed(Quantity.of(1, Units.AMPERE))));

    private ReadingSymbols() {}
}
