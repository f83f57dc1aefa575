package loomwright.switching;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The letters and formulas of a trigger loop. */
final class TriggerSymbols {
    static final Symbol LOWEST = Symbol.of("U", "low", "lowest supply voltage", Dimension.VOLTAGE);
    static final Symbol HIGHEST = Symbol.of("U", "high", "highest supply voltage", Dimension.VOLTAGE);
    static final Symbol LOOP = Symbol.of("R", "loop", "resistance of the trigger wire, out and back", Dimension.RESISTANCE);
    static final Symbol LEAST_CURRENT = Symbol.of("I", "low", "trigger current at the lowest voltage", Dimension.CURRENT);
    static final Symbol MOST_CURRENT = Symbol.of("I", "high", "trigger current at the highest voltage", Dimension.CURRENT);
    static final Symbol WIRE_DROP = Symbol.of("U", "w", "drop of the trigger wire at the lowest voltage", Dimension.VOLTAGE);
    static final Symbol AT_TRIGGER = Symbol.of("U", "t", "voltage at the trigger, supply at its lowest", Dimension.VOLTAGE);
    static final Symbol FUSE = Symbol.of("I", "f", "rating of the trigger's fuse-link", Dimension.CURRENT);
    static final Symbol LOADING = Symbol.of("k", "load on the fuse-link, as a share of its rating", Dimension.NUMBER);

    static final Formula COIL_LOWEST =
            new Formula(LEAST_CURRENT, LOWEST.over(SwitchSymbols.COIL_RESISTANCE.plus(LOOP)));
    static final Formula COIL_HIGHEST =
            new Formula(MOST_CURRENT, HIGHEST.over(SwitchSymbols.COIL_RESISTANCE.plus(LOOP)));
    static final Formula SOLID_LOWEST = new Formula(LEAST_CURRENT, SwitchSymbols.TRIGGER);
    static final Formula SOLID_HIGHEST = new Formula(MOST_CURRENT, SwitchSymbols.TRIGGER);
    static final Formula DROP = new Formula(WIRE_DROP, LEAST_CURRENT.times(LOOP));
    static final Formula AT_LOWEST = new Formula(AT_TRIGGER, LOWEST.minus(WIRE_DROP));
    static final Formula FUSE_LOADING = new Formula(LOADING, MOST_CURRENT.over(FUSE));

    static final Formula SLIP_WIRE_FORGOTTEN = new Formula(LEAST_CURRENT, LOWEST.over(SwitchSymbols.COIL_RESISTANCE));
    static final Formula SLIP_ONE_WAY = new Formula(WIRE_DROP, LEAST_CURRENT.times(LOOP).over(Expression.number(2)));
    static final Formula SLIP_AT_HIGHEST = new Formula(AT_TRIGGER, HIGHEST.minus(MOST_CURRENT.times(LOOP)));
    static final Formula SLIP_LOADING_AT_LOWEST = new Formula(LOADING, LEAST_CURRENT.over(FUSE));
    static final Formula SLIP_LOADING_UPSIDE_DOWN = new Formula(LOADING, FUSE.over(MOST_CURRENT));

    private TriggerSymbols() {}
}
