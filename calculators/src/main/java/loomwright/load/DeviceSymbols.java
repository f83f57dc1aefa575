package loomwright.load;

import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The letters of what a device draws. */
final class DeviceSymbols {
    static final Symbol DEVICE_VOLTAGE = Symbol.of("U", "d", "voltage at the device", Dimension.VOLTAGE);
    static final Symbol DEVICE_CURRENT = Symbol.of("I", "d", "current at the device", Dimension.CURRENT);
    static final Symbol DEVICE_POWER = Symbol.of("P", "d", "power at the device", Dimension.POWER);
    static final Symbol EFFICIENCY = Symbol.of("η", "efficiency of the converter", Dimension.NUMBER);
    static final Symbol INPUT_POWER = Symbol.of("P", "in", "power taken from the supply", Dimension.POWER);
    static final Symbol RATED_VOLTAGE = Symbol.of("U", "r", "voltage at which the load takes this power", Dimension.VOLTAGE);
    static final Symbol RATED_CURRENT = Symbol.of("I", "r", "current at that voltage", Dimension.CURRENT);
    static final Symbol SUPPLY_VOLTAGE = Symbol.of("U", "s", "supply voltage", Dimension.VOLTAGE);
    static final Symbol LOWEST_VOLTAGE = Symbol.of("U", "low", "lowest supply voltage", Dimension.VOLTAGE);
    static final Symbol HIGHEST_VOLTAGE = Symbol.of("U", "high", "highest supply voltage", Dimension.VOLTAGE);
    static final Symbol CURRENT = Symbol.of("I", "current from the supply", Dimension.CURRENT);
    static final Symbol CURRENT_AT_LOWEST = Symbol.of("I", "low", "current at the lowest voltage", Dimension.CURRENT);
    static final Symbol CURRENT_AT_HIGHEST = Symbol.of("I", "high", "current at the highest voltage", Dimension.CURRENT);
    static final Symbol LARGEST_CURRENT = Symbol.of("I", "max", "largest current", Dimension.CURRENT);

    private DeviceSymbols() {}
}
