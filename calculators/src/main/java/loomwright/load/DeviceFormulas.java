package loomwright.load;

import static loomwright.load.DeviceSymbols.CURRENT;
import static loomwright.load.DeviceSymbols.CURRENT_AT_HIGHEST;
import static loomwright.load.DeviceSymbols.CURRENT_AT_LOWEST;
import static loomwright.load.DeviceSymbols.DEVICE_CURRENT;
import static loomwright.load.DeviceSymbols.DEVICE_POWER;
import static loomwright.load.DeviceSymbols.DEVICE_VOLTAGE;
import static loomwright.load.DeviceSymbols.EFFICIENCY;
import static loomwright.load.DeviceSymbols.HIGHEST_VOLTAGE;
import static loomwright.load.DeviceSymbols.INPUT_POWER;
import static loomwright.load.DeviceSymbols.LOWEST_VOLTAGE;
import static loomwright.load.DeviceSymbols.RATED_CURRENT;
import static loomwright.load.DeviceSymbols.RATED_VOLTAGE;
import static loomwright.load.DeviceSymbols.SUPPLY_VOLTAGE;

import java.util.List;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.worked.NamedFormula;

/** The formulas of what a device draws. */
final class DeviceFormulas {
    static final Formula DEVICE_POWER_FROM_LABEL = new Formula(DEVICE_POWER, DEVICE_VOLTAGE.times(DEVICE_CURRENT));
    static final Formula INPUT_POWER_FROM_DEVICE = new Formula(INPUT_POWER, DEVICE_POWER.over(EFFICIENCY));

    /** Of a load that holds its power. */
    static final Formula CURRENT_BY_POWER = byPower(CURRENT, SUPPLY_VOLTAGE);
    static final Formula AT_LOWEST_BY_POWER = byPower(CURRENT_AT_LOWEST, LOWEST_VOLTAGE);
    static final Formula AT_HIGHEST_BY_POWER = byPower(CURRENT_AT_HIGHEST, HIGHEST_VOLTAGE);

    static final Formula CURRENT_AT_RATING = byPower(RATED_CURRENT, RATED_VOLTAGE);

    /** Of a fixed resistance: in proportion to the voltage. */
    static final Formula CURRENT_BY_RESISTANCE = byResistance(CURRENT, SUPPLY_VOLTAGE);
    static final Formula AT_LOWEST_BY_RESISTANCE = byResistance(CURRENT_AT_LOWEST, LOWEST_VOLTAGE);
    static final Formula AT_HIGHEST_BY_RESISTANCE = byResistance(CURRENT_AT_HIGHEST, HIGHEST_VOLTAGE);

    static final List<NamedFormula> NAMED = List.of(
            new NamedFormula("device-power", DEVICE_POWER_FROM_LABEL),
            new NamedFormula("input-power", INPUT_POWER_FROM_DEVICE),
            new NamedFormula("current", CURRENT_BY_POWER),
            new NamedFormula("current-at-lowest", AT_LOWEST_BY_POWER),
            new NamedFormula("current-at-highest", AT_HIGHEST_BY_POWER),
            new NamedFormula("resistive-current-at-lowest", AT_LOWEST_BY_RESISTANCE),
            new NamedFormula("resistive-current-at-highest", AT_HIGHEST_BY_RESISTANCE));

    private DeviceFormulas() {}

    private static Formula byPower(Symbol current, Symbol voltage) {
        return new Formula(current, INPUT_POWER.over(voltage));
    }

    private static Formula byResistance(Symbol current, Symbol voltage) {
        return new Formula(current, RATED_CURRENT.times(voltage.over(RATED_VOLTAGE)));
    }
}
