package loomwright.supply;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The formulas of battery size, right and wrong. */
final class SizeFormulas {
    static final Symbol DAYS = Symbol.of("n", "days without charging", Dimension.NUMBER);
    static final Symbol NEEDED = Symbol.of("C", "capacity needed", Dimension.CHARGE);
    static final Symbol WITH = Symbol.of("C", "r", "capacity with the reserve", Dimension.CHARGE);
    static final Symbol WHOLE = Symbol.of("E", "C", "energy of a full battery", Dimension.ENERGY);
    static final Symbol BY_FIVE = Symbol.of("C", "5", "capacity by the rule of five", Dimension.CHARGE);

    private static final Expression TAKEN = Symbols.CHARGE.times(DAYS);

    static final Formula CHARGE = new Formula(Symbols.CHARGE, Symbols.ENERGY.over(Symbols.VOLTAGE));
    static final Formula CAPACITY = new Formula(NEEDED, TAKEN.over(Symbols.DEPTH));
    static final Formula CAPACITY_COLD = new Formula(NEEDED, TAKEN.times(Symbols.MULTIPLIER).over(Symbols.DEPTH));
    static final Formula WITH_RESERVE = new Formula(WITH, NEEDED.times(Expression.number(1).plus(DayUse.RESERVE)));
    static final Formula CAPACITY_ENERGY = new Formula(WHOLE, Symbols.VOLTAGE.times(NEEDED));
    static final Formula RULE_OF_FIVE = new Formula(BY_FIVE, Expression.number(5).times(Symbols.ENERGY).over(Symbols.VOLTAGE));

    static final Formula DEPTH_LEFT_OUT = new Formula(NEEDED, TAKEN);
    static final Formula DEPTH_LEFT_OUT_COLD = new Formula(NEEDED, TAKEN.times(Symbols.MULTIPLIER));
    static final Formula MULTIPLIED_BY_DEPTH = new Formula(NEEDED, TAKEN.times(Symbols.DEPTH));
    static final Formula MULTIPLIED_BY_DEPTH_COLD = new Formula(NEEDED, TAKEN.times(Symbols.DEPTH).times(Symbols.MULTIPLIER));
    static final Formula COLD_TURNED_OVER = new Formula(NEEDED, TAKEN.over(Symbols.DEPTH.times(Symbols.MULTIPLIER)));
    static final Formula DAYS_LEFT_OUT = new Formula(NEEDED, Symbols.CHARGE.over(Symbols.DEPTH));
    static final Formula DAYS_LEFT_OUT_COLD = new Formula(NEEDED, Symbols.CHARGE.times(Symbols.MULTIPLIER).over(Symbols.DEPTH));

    private SizeFormulas() {}
}
