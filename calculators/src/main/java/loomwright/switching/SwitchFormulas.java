package loomwright.switching;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** What two kinds of switch lose at the same current. */
final class SwitchFormulas {
    static final Formula DROP_OF_RESISTANCE =
            new Formula(SwitchSymbols.DROP, SwitchSymbols.CURRENT.times(SwitchSymbols.ON_RESISTANCE));
    static final Formula SOLID_HEAT = new Formula(SwitchSymbols.HEAT, SwitchSymbols.CURRENT.times(SwitchSymbols.DROP));
    static final Formula SOLID_POWER = new Formula(
            SwitchSymbols.HEAT,
            SwitchSymbols.CURRENT.times(SwitchSymbols.DROP).plus(SwitchSymbols.SUPPLY.times(SwitchSymbols.TRIGGER)));
    static final Formula CONTACT_HEAT = new Formula(SwitchSymbols.HEAT, SwitchSymbols.CURRENT.squared().times(SwitchSymbols.CONTACT));
    static final Formula RELAY_POWER = new Formula(
            SwitchSymbols.HEAT, SwitchSymbols.COIL_POWER.plus(SwitchSymbols.CURRENT.squared().times(SwitchSymbols.CONTACT)));

    /** The current at which both lose the same: below it solid state loses less, above it the relay. */
    static final Formula BREAK_EVEN = new Formula(
            SwitchSymbols.CURRENT,
            SwitchSymbols.COIL_POWER
                    .minus(SwitchSymbols.SUPPLY.times(SwitchSymbols.TRIGGER))
                    .over(SwitchSymbols.ON_RESISTANCE.minus(SwitchSymbols.CONTACT))
                    .squareRoot());

    static final Formula NO_TRIGGER = new Formula(
            SwitchSymbols.CURRENT, SwitchSymbols.COIL_POWER.over(SwitchSymbols.ON_RESISTANCE).squareRoot());
    static final Formula SQUARE_FORGOTTEN = new Formula(
            SwitchSymbols.HEAT, SwitchSymbols.CURRENT.times(SwitchSymbols.ON_RESISTANCE).times(Expression.fixed(Quantity.of(1, Units.AMPERE))));

    private SwitchFormulas() {}
}
