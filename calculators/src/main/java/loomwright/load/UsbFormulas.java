package loomwright.load;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The formulas of a USB outlet, right and wrong. */
final class UsbFormulas {
    static final Symbol POWER = Symbol.of("P", "power of a port", Dimension.POWER);
    static final Symbol PORT_VOLTAGE = Symbol.of("U", "p", "voltage of a port", Dimension.VOLTAGE);
    static final Symbol PORT_CURRENT = Symbol.of("I", "p", "current of a port", Dimension.CURRENT);
    static final Symbol TOGETHER = Symbol.of("P", "all", "power of all ports together", Dimension.POWER);
    static final Symbol OUTPUT = Symbol.of("P", "out", "power the outlet gives", Dimension.POWER);
    static final Symbol EFFICIENCY = Symbol.of("η", "efficiency of the converter", Dimension.NUMBER);
    static final Symbol OWN = Symbol.of("P", "0", "own draw of the outlet", Dimension.POWER);
    static final Symbol INPUT = Symbol.of("P", "in", "power taken from the supply", Dimension.POWER);
    static final Symbol HEAT = Symbol.of("P", "heat", "heat in the outlet", Dimension.POWER);
    static final Symbol SUPPLY = Symbol.of("U", "s", "supply voltage", Dimension.VOLTAGE);
    static final Symbol LOWEST = Symbol.of("U", "low", "lowest supply voltage", Dimension.VOLTAGE);
    static final Symbol CURRENT = Symbol.of("I", "s", "current at the supply voltage", Dimension.CURRENT);
    static final Symbol CURRENT_AT_LOWEST = Symbol.of("I", "low", "current at the lowest voltage", Dimension.CURRENT);

    static final Formula PORT_AMPERES = new Formula(PORT_CURRENT, POWER.over(PORT_VOLTAGE));
    static final Formula INPUT_POWER = new Formula(INPUT, OUTPUT.over(EFFICIENCY).plus(OWN));
    static final Formula HEAT_LOST = new Formula(HEAT, INPUT.minus(OUTPUT));
    static final Formula SUPPLY_CURRENT = new Formula(CURRENT, INPUT.over(SUPPLY));
    static final Formula LOWEST_CURRENT = new Formula(CURRENT_AT_LOWEST, INPUT.over(LOWEST));

    static final Formula AT_FIVE_VOLTS = new Formula(CURRENT, OUTPUT.over(Expression.fixed(Quantity.of(5, Units.VOLT))));
    static final Formula MULTIPLIED = new Formula(CURRENT, OUTPUT.times(EFFICIENCY).plus(OWN).over(SUPPLY));
    static final Formula EFFICIENCY_LEFT_OUT = new Formula(CURRENT, OUTPUT.plus(OWN).over(SUPPLY));
    static final Formula LIMIT_LEFT_OUT = new Formula(CURRENT, TOGETHER.over(EFFICIENCY).plus(OWN).over(SUPPLY));
    static final Formula SUPPLY_FOR_LOWEST = new Formula(CURRENT_AT_LOWEST, INPUT.over(SUPPLY));
    static final Formula SUPPLY_AMPERES_KEPT =
            new Formula(CURRENT_AT_LOWEST, INPUT.over(SUPPLY).times(LOWEST.over(SUPPLY)));

    private UsbFormulas() {}

    static Formula sum(Symbol subject, Iterable<Symbol> parts) {
        Expression sum = null;
        for (Symbol part : parts) {
            sum = sum == null ? part : sum.plus(part);
        }
        return new Formula(subject, sum);
    }
}
