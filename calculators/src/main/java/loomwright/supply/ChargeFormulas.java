package loomwright.supply;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The formulas of a state of charge, right and wrong. */
final class ChargeFormulas {
    static final Symbol AT_LEAST = Symbol.of("s", "low", "state of charge, at least", Dimension.NUMBER);
    static final Symbol AT_MOST = Symbol.of("s", "high", "state of charge, at most", Dimension.NUMBER);
    static final Symbol OTHER = Symbol.of("s", "other", "row of another table", Dimension.NUMBER);
    static final Symbol MEASURED = Symbol.of("U", "voltage at rest", Dimension.VOLTAGE);
    static final Symbol ROW_BELOW = Symbol.of("U", "low", "voltage of the row below", Dimension.VOLTAGE);
    static final Symbol ROW_ABOVE = Symbol.of("U", "high", "voltage of the row above", Dimension.VOLTAGE);
    static final Symbol FULL = Symbol.of("U", "full", "voltage of the full row", Dimension.VOLTAGE);
    static final Symbol LEFT = Symbol.of("Q", "ampere-hours left, at least", Dimension.CHARGE);
    static final Symbol DEFICIT = Symbol.of("Q", "d", "ampere-hours to put back, at most", Dimension.CHARGE);

    private static final Expression ONE = Expression.number(1);

    static final Formula LEFT_AT_LEAST = new Formula(LEFT, Symbols.CAPACITY.times(AT_LEAST));
    static final Formula DEFICIT_AT_MOST = new Formula(DEFICIT, Symbols.CAPACITY.times(ONE.minus(AT_LEAST)));

    static final Formula SHARE_OF_FULL_VOLTAGE = new Formula(AT_LEAST, MEASURED.over(FULL));
    static final Formula STRAIGHT_LINE = new Formula(
            AT_LEAST,
            AT_LEAST.plus(AT_MOST.minus(AT_LEAST).times(MEASURED.minus(ROW_BELOW)).over(ROW_ABOVE.minus(ROW_BELOW))));
    static final Formula ROW_OF_ANOTHER_TABLE = new Formula(AT_LEAST, OTHER);
    static final Formula DEPTH_FOR_CHARGE = new Formula(AT_LEAST, ONE.minus(AT_LEAST));
    static final Formula UPPER_ROW = new Formula(AT_LEAST, AT_MOST);
    static final Formula LEFT_FOR_DEFICIT = new Formula(DEFICIT, Symbols.CAPACITY.times(AT_LEAST));

    private ChargeFormulas() {}
}
