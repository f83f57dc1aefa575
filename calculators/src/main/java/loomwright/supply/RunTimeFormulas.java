package loomwright.supply;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The formulas of run time, right and wrong. */
final class RunTimeFormulas {
    static final Symbol WHOLE = Symbol.of("E", "C", "energy of a full battery", Dimension.ENERGY);
    static final Symbol USABLE_WHOLE = Symbol.of("E", "u", "usable watt-hours", Dimension.ENERGY);
    static final Symbol RESTING = Symbol.of("E", "voltage at rest", Dimension.VOLTAGE);
    static final Symbol RESISTANCE = Symbol.of("R", "i", "internal resistance", Dimension.RESISTANCE);
    static final Symbol UNDER_LOAD = Symbol.of("U", "voltage under load", Dimension.VOLTAGE);
    static final Symbol RATED_CURRENT = Symbol.of("I", "20", "current of the 20 h rating", Dimension.CURRENT);

    static final Formula USABLE = new Formula(Symbols.USABLE, Symbols.CAPACITY.times(Symbols.DEPTH));
    static final Formula USABLE_COLD =
            new Formula(Symbols.USABLE, Symbols.CAPACITY.times(Symbols.DEPTH).times(Symbols.COLD_SHARE));
    static final Formula WHOLE_ENERGY = new Formula(WHOLE, Symbols.VOLTAGE.times(Symbols.CAPACITY));
    static final Formula USABLE_ENERGY = new Formula(USABLE_WHOLE, Symbols.VOLTAGE.times(Symbols.USABLE));
    static final Formula RUN_TIME = new Formula(Symbols.RUN_TIME, Symbols.USABLE.over(Symbols.CURRENT));
    static final Formula VOLTAGE_UNDER_LOAD = new Formula(UNDER_LOAD, RESTING.minus(Symbols.CURRENT.times(RESISTANCE)));
    static final Formula TWENTY_HOUR_CURRENT =
            new Formula(RATED_CURRENT, Symbols.CAPACITY.over(Expression.fixed(Quantity.of(20, Units.HOUR))));

    static final Formula DEPTH_LEFT_OUT = new Formula(Symbols.RUN_TIME, Symbols.CAPACITY.over(Symbols.CURRENT));
    static final Formula DEPTH_LEFT_OUT_COLD =
            new Formula(Symbols.RUN_TIME, Symbols.CAPACITY.times(Symbols.COLD_SHARE).over(Symbols.CURRENT));
    static final Formula REST_FOR_DEPTH = new Formula(
            Symbols.RUN_TIME, Symbols.CAPACITY.times(Expression.number(1).minus(Symbols.DEPTH)).over(Symbols.CURRENT));
    static final Formula DIVIDED_BY_DEPTH =
            new Formula(Symbols.RUN_TIME, Symbols.CAPACITY.over(Symbols.DEPTH.times(Symbols.CURRENT)));
    static final Formula COLD_TURNED_OVER = new Formula(
            Symbols.RUN_TIME, Symbols.CAPACITY.times(Symbols.DEPTH).over(Symbols.COLD_SHARE.times(Symbols.CURRENT)));
    static final Formula COLD_LEFT_OUT =
            new Formula(Symbols.RUN_TIME, Symbols.CAPACITY.times(Symbols.DEPTH).over(Symbols.CURRENT));
    static final Formula ADDED = new Formula(UNDER_LOAD, RESTING.plus(Symbols.CURRENT.times(RESISTANCE)));

    private RunTimeFormulas() {}
}
