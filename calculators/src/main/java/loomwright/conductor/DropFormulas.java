package loomwright.conductor;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** The formulas of voltage drop, right and wrong. */
final class DropFormulas {
    static final Row MIL_FOOT = constant("mil-foot-small-craft");
    static final Row CONDUCTIVITY_56 = constant("chandlery-conductivity");
    static final Row METRIC = constant("metric-drop");

    static final Formula CIRCUIT_LENGTH = new Formula(Symbols.CIRCUIT_LENGTH, Expression.number(2).times(Symbols.ROUTE_LENGTH));
    static final Formula CIRCUIT_RESISTANCE =
            new Formula(Symbols.CIRCUIT_RESISTANCE, Symbols.PER_METRE.times(Symbols.CIRCUIT_LENGTH));
    static final Formula DROP = new Formula(Symbols.DROP, Symbols.CURRENT.times(Symbols.CIRCUIT_RESISTANCE));
    static final Formula SHARE = new Formula(Symbols.DROP_SHARE, Symbols.DROP.over(Symbols.SUPPLY_VOLTAGE));
    static final Formula LOAD_VOLTAGE = new Formula(Symbols.LOAD_VOLTAGE, Symbols.SUPPLY_VOLTAGE.minus(Symbols.DROP));
    static final Formula POWER_LOST = new Formula(Symbols.POWER_LOST, Symbols.DROP.times(Symbols.CURRENT));
    static final Formula RESISTANCE_FROM_DROP = new Formula(Symbols.CIRCUIT_RESISTANCE, Symbols.DROP.over(Symbols.CURRENT));

    /** Drop = K × I × L ÷ CM, with L out and back. */
    static final Formula CIRCULAR_MIL = byResistivity(MIL_FOOT, Units.OHM_CIRCULAR_MIL_PER_FOOT);

    /** Drop = 0.0164 × I × L ÷ S, with L out and back. */
    static final Formula RESISTIVITY_0_0164 = byResistivity(METRIC, Units.OHM_SQUARE_MILLIMETRE_PER_METRE);

    /** Drop = 2 × l × I ÷ (56 × S), with l one way. */
    static final Formula BY_CONDUCTIVITY_56 = new Formula(
            Symbols.DROP,
            Expression.number(2).times(Symbols.ROUTE_LENGTH).times(Symbols.CURRENT)
                    .over(fixed(CONDUCTIVITY_56, Units.METRE_PER_OHM_SQUARE_MILLIMETRE).times(Symbols.AREA)));

    /** A slip: the drop of a stretch of conductor counted {@code times} times the right length. */
    static Formula lengthCounted(double times) {
        Expression length = times == 1 ? Symbols.CIRCUIT_LENGTH : Expression.number(times).times(Symbols.CIRCUIT_LENGTH);
        return new Formula(Symbols.DROP, Symbols.CURRENT.times(Symbols.PER_METRE).times(length));
    }

    private static Formula byResistivity(Row constant, Unit unit) {
        return new Formula(
                Symbols.DROP,
                fixed(constant, unit).times(Symbols.CURRENT).times(Symbols.CIRCUIT_LENGTH).over(Symbols.AREA));
    }

    private static Expression fixed(Row constant, Unit unit) {
        Quantity quantity = constant.quantity("value", unit);
        return Expression.fixed(quantity);
    }

    private static Row constant(String key) {
        return PublishedTables.copperConstants().row(key);
    }

    private DropFormulas() {}
}
