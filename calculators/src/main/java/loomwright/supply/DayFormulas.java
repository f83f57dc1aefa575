package loomwright.supply;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The formulas of a day's energy. */
final class DayFormulas {
    static final Symbol STANDING_CURRENT = Symbol.of("I", "0", "standing draw", Dimension.CURRENT);
    static final Symbol STANDING = Symbol.of("E", "0", "energy of the standing draw in a day", Dimension.ENERGY);
    static final Symbol AVERAGE = Symbol.of("I", "m", "average current over the day", Dimension.CURRENT);
    static final Symbol TOGETHER = Symbol.of("I", "all", "current with every load drawing at once", Dimension.CURRENT);

    static final Expression WHOLE_DAY = Expression.fixed(Quantity.of(24, Units.HOUR));

    static final Formula ENERGY_BY_POWER = new Formula(Symbols.ENERGY, Symbols.POWER.times(Symbols.TIME).times(Symbols.DUTY));
    static final Formula ENERGY_BY_CURRENT =
            new Formula(Symbols.ENERGY, Symbols.VOLTAGE.times(Symbols.CURRENT).times(Symbols.TIME).times(Symbols.DUTY));
    static final Formula STANDING_ENERGY = new Formula(STANDING, Symbols.VOLTAGE.times(STANDING_CURRENT).times(WHOLE_DAY));
    static final Formula CHARGE = new Formula(Symbols.CHARGE, Symbols.ENERGY.over(Symbols.VOLTAGE));
    static final Formula AVERAGE_CURRENT = new Formula(AVERAGE, Symbols.CHARGE.over(WHOLE_DAY));

    private DayFormulas() {}
}
