package loomwright.protection;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.NamedFormula;

/** Preece's and Onderdonk's equations on the melting of copper wire, right and wrong. */
final class FusingFormulas {
    private static final Row PREECE_ROW = row("preece");
    private static final Row ONDERDONK_ROW = row("onderdonk-constant");

    static final Symbol AREA = Symbol.of("A", "cross-section", Dimension.AREA);
    static final Symbol DIAMETER = Symbol.of("d", "diameter of the wire", Dimension.LENGTH);
    static final Symbol TIME = Symbol.of("t", "time until it melts", Dimension.TIME);
    static final Symbol CURRENT = Symbol.of("I", "current", Dimension.CURRENT);
    static final Symbol AMBIENT = Symbol.of("θ", "a", "temperature of the wire at the start", Dimension.TEMPERATURE);
    static final Symbol MELTING = Symbol.of("θ", "m", "melting temperature of copper", Dimension.TEMPERATURE);
    static final Symbol PREECE_CURRENT = Symbol.of("I", "P", "current that melts the wire in the long run", Dimension.CURRENT);
    static final Symbol ONDERDONK_CURRENT = Symbol.of("I", "O", "current that melts the wire in this time", Dimension.CURRENT);

    private static final Expression ZERO = constant("onderdonk-zero", Units.CELSIUS);
    private static final Expression THIRTY_THREE = constant("onderdonk-constant", Units.SQUARE_CIRCULAR_MIL_PER_AMPERE_SQUARED_SECOND);

    static final Formula DIAMETER_OF_AREA = new Formula(
            DIAMETER, Expression.number(2).times(AREA.over(Expression.number(Math.PI)).squareRoot()));
    static final Formula AREA_OF_DIAMETER =
            new Formula(AREA, Expression.number(Math.PI).over(Expression.number(4)).times(DIAMETER.squared()));
    static final Formula PREECE = new Formula(
            PREECE_CURRENT, constant("preece", Units.AMPERE_PER_INCH_THREE_HALVES).times(DIAMETER.toTheThreeHalves()));
    static final Formula PREECE_OF_RADIUS = new Formula(
            PREECE_CURRENT,
            constant("preece", Units.AMPERE_PER_INCH_THREE_HALVES).times(DIAMETER.over(Expression.number(2)).toTheThreeHalves()));

    static final Formula ONDERDONK = onderdonk(decimal(heating(ZERO.plus(AMBIENT))));
    static final Formula ONDERDONK_TIME = new Formula(
            TIME,
            decimal(heating(ZERO.plus(AMBIENT)))
                    .over(THIRTY_THREE)
                    .times(AREA.over(CURRENT).squared()));
    static final Formula SIGN_SLIP = onderdonk(decimal(heating(ZERO.minus(AMBIENT))));
    static final Formula SIGN_SLIP_TIME = new Formula(
            TIME, decimal(heating(ZERO.minus(AMBIENT))).over(THIRTY_THREE).times(AREA.over(CURRENT).squared()));
    static final Formula NATURAL_LOGARITHM = onderdonk(Expression.naturalLogarithm(heating(ZERO.plus(AMBIENT))));

    static final List<NamedFormula> NAMED = List.of(
            new NamedFormula("preece", PREECE),
            new NamedFormula("onderdonk", ONDERDONK),
            new NamedFormula("onderdonk-time", ONDERDONK_TIME));

    private FusingFormulas() {}

    static Source preece() {
        return PREECE_ROW.source();
    }

    static Source onderdonk() {
        return ONDERDONK_ROW.source();
    }

    static Row row(String item) {
        return PublishedTables.wireFusing().row(item);
    }

    private static Formula onderdonk(Expression logarithm) {
        return new Formula(ONDERDONK_CURRENT, AREA.times(logarithm.over(THIRTY_THREE.times(TIME)).squareRoot()));
    }

    /** By how much the wire warms, as a plain number. */
    private static Expression heating(Expression below) {
        return MELTING.minus(AMBIENT).over(below).plus(Expression.number(1));
    }

    private static Expression decimal(Expression of) {
        return Expression.naturalLogarithm(of).over(Expression.naturalLogarithm(Expression.number(10)));
    }

    private static Expression constant(String item, Unit unit) {
        return Expression.fixed(row(item).quantity("value", unit));
    }
}
