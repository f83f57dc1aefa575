package loomwright.supply;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The formulas of a solar panel's yield, right and wrong. */
final class YieldFormulas {
    static final Symbol PANEL = Symbol.of("P", "rated power of the panel", Dimension.POWER);
    static final Symbol SUN = Symbol.of("h", "peak sun hours of a day", Dimension.TIME);
    static final Symbol EFFICIENCY = Symbol.of("η", "efficiency in all", Dimension.NUMBER);
    static final Symbol YIELD = Symbol.of("E", "p", "energy of a day from the panel", Dimension.ENERGY);
    static final Symbol YIELD_CHARGE = Symbol.of("Q", "p", "ampere-hours of a day from the panel", Dimension.CHARGE);
    static final Symbol USED = Symbol.of("E", "energy used in a day", Dimension.ENERGY);
    static final Symbol BALANCE = Symbol.of("B", "energy left over in a day", Dimension.ENERGY);
    static final Symbol DEFICIT = Symbol.of("Q", "d", "ampere-hours to put back", Dimension.CHARGE);
    static final Symbol DEFICIT_ENERGY = Symbol.of("E", "d", "energy to put back", Dimension.ENERGY);
    static final Symbol DAYS = Symbol.of("n", "time to put it back", Dimension.TIME);
    static final Symbol NEEDED = Symbol.of("P", "n", "panel power needed", Dimension.POWER);
    static final Symbol WITH = Symbol.of("P", "r", "panel power with the reserve", Dimension.POWER);
    static final Symbol LARGEST_CURRENT = Symbol.of("I", "p", "charging current in full sun, at most", Dimension.CURRENT);

    static final Expression ONE_DAY = Expression.fixed(Quantity.of(1, Units.DAY));

    static final Formula DAY_YIELD = new Formula(YIELD, PANEL.times(SUN).times(EFFICIENCY));
    static final Formula DAY_CHARGE = new Formula(YIELD_CHARGE, YIELD.over(Symbols.VOLTAGE));
    static final Formula DAY_BALANCE = new Formula(BALANCE, YIELD.minus(USED));
    static final Formula ENERGY_TO_PUT_BACK = new Formula(DEFICIT_ENERGY, Symbols.VOLTAGE.times(DEFICIT));
    static final Formula DAYS_TO_RECOVER = new Formula(DAYS, ONE_DAY.times(DEFICIT_ENERGY).over(BALANCE));
    static final Formula POWER_NEEDED = new Formula(NEEDED, USED.over(SUN.times(EFFICIENCY)));
    static final Formula WITH_RESERVE = new Formula(WITH, NEEDED.times(Expression.number(1).plus(DayUse.RESERVE)));
    static final Formula FULL_SUN_CURRENT = new Formula(LARGEST_CURRENT, PANEL.over(Symbols.VOLTAGE));

    static final Formula EFFICIENCY_LEFT_OUT = new Formula(YIELD, PANEL.times(SUN));
    static final Formula DIVIDED = new Formula(YIELD, PANEL.times(SUN).over(EFFICIENCY));
    static final Formula DAYLIGHT = new Formula(YIELD, PANEL.times(Expression.fixed(Quantity.of(12, Units.HOUR))).times(EFFICIENCY));
    static final Formula NEED_MULTIPLIED = new Formula(NEEDED, USED.times(EFFICIENCY).over(SUN));
    static final Formula NEED_WITHOUT_EFFICIENCY = new Formula(NEEDED, USED.over(SUN));
    static final Formula YIELD_FOR_BALANCE = new Formula(DAYS, ONE_DAY.times(DEFICIT_ENERGY).over(YIELD));

    private YieldFormulas() {}
}
