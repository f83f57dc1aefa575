package loomwright.load;

import static loomwright.load.OhmSymbols.CURRENT;
import static loomwright.load.OhmSymbols.POWER;
import static loomwright.load.OhmSymbols.RESISTANCE;
import static loomwright.load.OhmSymbols.VOLTAGE;

import java.util.List;
import loomwright.formula.Formula;
import loomwright.worked.NamedFormula;

/** The twelve forms of Ohm's law and power: each of the four quantities from two of the others. */
final class OhmFormulas {
    static final Formula VOLTAGE_FROM_CURRENT_AND_RESISTANCE = new Formula(VOLTAGE, CURRENT.times(RESISTANCE));
    static final Formula VOLTAGE_FROM_CURRENT_AND_POWER = new Formula(VOLTAGE, POWER.over(CURRENT));
    static final Formula CURRENT_FROM_VOLTAGE_AND_RESISTANCE = new Formula(CURRENT, VOLTAGE.over(RESISTANCE));
    static final Formula CURRENT_FROM_VOLTAGE_AND_POWER = new Formula(CURRENT, POWER.over(VOLTAGE));
    static final Formula CURRENT_FROM_RESISTANCE_AND_POWER = new Formula(CURRENT, POWER.over(RESISTANCE).squareRoot());
    static final Formula RESISTANCE_FROM_VOLTAGE_AND_CURRENT = new Formula(RESISTANCE, VOLTAGE.over(CURRENT));
    static final Formula POWER_FROM_VOLTAGE_AND_CURRENT = new Formula(POWER, VOLTAGE.times(CURRENT));

    static final List<NamedFormula> NAMED = List.of(
            new NamedFormula("voltage-from-current-and-resistance", VOLTAGE_FROM_CURRENT_AND_RESISTANCE),
            new NamedFormula("voltage-from-current-and-power", VOLTAGE_FROM_CURRENT_AND_POWER),
            new NamedFormula("voltage-from-resistance-and-power", new Formula(VOLTAGE, POWER.times(RESISTANCE).squareRoot())),
            new NamedFormula("current-from-voltage-and-resistance", CURRENT_FROM_VOLTAGE_AND_RESISTANCE),
            new NamedFormula("current-from-voltage-and-power", CURRENT_FROM_VOLTAGE_AND_POWER),
            new NamedFormula("current-from-resistance-and-power", CURRENT_FROM_RESISTANCE_AND_POWER),
            new NamedFormula("resistance-from-voltage-and-current", RESISTANCE_FROM_VOLTAGE_AND_CURRENT),
            new NamedFormula("resistance-from-voltage-and-power", new Formula(RESISTANCE, VOLTAGE.squared().over(POWER))),
            new NamedFormula("resistance-from-current-and-power", new Formula(RESISTANCE, POWER.over(CURRENT.squared()))),
            new NamedFormula("power-from-voltage-and-current", POWER_FROM_VOLTAGE_AND_CURRENT),
            new NamedFormula("power-from-voltage-and-resistance", new Formula(POWER, VOLTAGE.squared().over(RESISTANCE))),
            new NamedFormula("power-from-current-and-resistance", new Formula(POWER, CURRENT.squared().times(RESISTANCE))));

    private OhmFormulas() {}
}
