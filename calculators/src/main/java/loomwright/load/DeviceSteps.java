package loomwright.load;

import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.WorkingBuilder;

/** The currents at the three voltages, for each kind of load. */
final class DeviceSteps {
    private DeviceSteps() {}

    static Values holdsPower(WorkingBuilder working, Values values) {
        Quantity current = step(
                working, "Divide the power by the supply voltage", DeviceFormulas.CURRENT_BY_POWER, values,
                "Watts are volts times amperes, so watts divided by volts leave the amperes.");
        Quantity low = isSupply(values, DeviceSymbols.LOWEST_VOLTAGE) ? current : step(
                working, "Divide it by the lowest voltage", DeviceFormulas.AT_LOWEST_BY_POWER, values,
                "The load holds its power: with fewer volts it takes more amperes.");
        Quantity high = isSupply(values, DeviceSymbols.HIGHEST_VOLTAGE) ? current : step(
                working, "Divide it by the highest voltage", DeviceFormulas.AT_HIGHEST_BY_POWER, values,
                "With more volts it takes fewer amperes.");
        return with(values, current, low, high);
    }

    static Values fixedResistance(WorkingBuilder working, Values values) {
        Values rated = rated(working, values);
        Quantity current = isSupply(values, DeviceSymbols.RATED_VOLTAGE) ? rated.of(DeviceSymbols.RATED_CURRENT) : step(
                working, "Bring it to the supply voltage", DeviceFormulas.CURRENT_BY_RESISTANCE, rated,
                "The resistance is fixed, so the current follows the voltage in proportion.");
        Quantity low = isSupply(values, DeviceSymbols.LOWEST_VOLTAGE) ? current : step(
                working, "Bring it to the lowest voltage", DeviceFormulas.AT_LOWEST_BY_RESISTANCE, rated,
                "The resistance is fixed: fewer volts push fewer amperes, in proportion.");
        Quantity high = isSupply(values, DeviceSymbols.HIGHEST_VOLTAGE) ? current : step(
                working, "Bring it to the highest voltage", DeviceFormulas.AT_HIGHEST_BY_RESISTANCE, rated,
                "More volts push more amperes, in proportion.");
        return with(rated, current, low, high);
    }

    /** A voltage that is the supply voltage needs no step of its own. */
    private static boolean isSupply(Values values, Symbol voltage) {
        return values.of(voltage).base() == values.of(DeviceSymbols.SUPPLY_VOLTAGE).base();
    }

    static Values holdsCurrent(WorkingBuilder working, Values values) {
        Values rated = rated(working, values);
        Quantity current = rated.of(DeviceSymbols.RATED_CURRENT);
        return with(rated, current, current, current);
    }

    private static Values rated(WorkingBuilder working, Values values) {
        Quantity current = step(
                working, "Divide the power by the voltage it holds at", DeviceFormulas.CURRENT_AT_RATING, values,
                "The watts of the label hold at one voltage only.");
        return values.with(DeviceSymbols.RATED_CURRENT, current);
    }

    private static Quantity step(WorkingBuilder working, String words, Formula formula, Values values, String why) {
        return working.compute(words, formula, values, Units.AMPERE, why);
    }

    private static Values with(Values values, Quantity current, Quantity low, Quantity high) {
        return values.with(DeviceSymbols.CURRENT, current)
                .with(DeviceSymbols.CURRENT_AT_LOWEST, low)
                .with(DeviceSymbols.CURRENT_AT_HIGHEST, high);
    }
}
