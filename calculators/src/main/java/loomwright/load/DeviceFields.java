package loomwright.load;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.Description;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the calculator of a device's current asks and answers. */
final class DeviceFields {
    static final QuantityField POWER = QuantityField.of(
                    "power", "Power of the device",
                    "The watts on its label, or the total of all ports. Leave empty if the label gives volts and amperes.",
                    0.01, 10_000, Units.WATT, Units.MILLIWATT, Units.KILOWATT)
            .optional();

    static final QuantityField DEVICE_VOLTAGE = QuantityField.of(
                    "device-voltage", "Voltage at the device", "The output line of its charger, such as 5 V or 20 V.", 0.5, 400, Units.VOLT)
            .optional();

    static final QuantityField DEVICE_CURRENT = QuantityField.of(
                    "device-current", "Current at the device", "The amperes on the same line.", 0.001, 1000, Units.AMPERE,
                    Units.MILLIAMPERE)
            .optional();

    static final QuantityField EFFICIENCY = QuantityField.of(
                    "efficiency", "Efficiency of the converter",
                    "From its data sheet. Empty: the least for its kind is taken, 80 % for a USB outlet.", 10, 100,
                    Units.PERCENT)
            .optional();

    static final QuantityField SUPPLY_VOLTAGE =
            QuantityField.of("supply-voltage", "Supply voltage", "What the supply has as a rule.", 1, 60, Units.VOLT).usually("12 V");

    static final QuantityField LOWEST_VOLTAGE = QuantityField.of(
                    "lowest-voltage", "Lowest supply voltage", "With the battery nearly empty.", 1, 60, Units.VOLT)
            .usually(SupplyWindow.LOWEST.text());

    static final QuantityField HIGHEST_VOLTAGE = QuantityField.of(
                    "highest-voltage", "Highest supply voltage", "While the battery is charged.", 1, 60, Units.VOLT)
            .usually(SupplyWindow.HIGHEST.text());

    static final Description DESCRIPTION = new Description(
            "device-current",
            "What a device draws from the supply",
            "How many amperes flow in the cable behind this device?",
            List.of(
                    "Steady running. A motor draws several times as much for a moment when it starts.",
                    "The voltages are those at the device's input; what the cable loses comes off the supply first.",
                    "The efficiency is the same at every voltage.",
                    "The power of a fixed resistance holds at the voltage of its label; without one, at the supply voltage."),
            List.of(POWER, DEVICE_VOLTAGE, DEVICE_CURRENT, Converter.field(), EFFICIENCY, SUPPLY_VOLTAGE, LOWEST_VOLTAGE, HIGHEST_VOLTAGE, LoadKind.field()),
            List.of(
                    new Output("device-power", "Power at the device", Units.WATT),
                    new Output("input-power", "Power taken from the supply", Units.WATT),
                    new Output("current", "Current at the supply voltage", Units.AMPERE),
                    new Output("current-at-lowest", "Current at the lowest voltage", Units.AMPERE),
                    new Output("current-at-highest", "Current at the highest voltage", Units.AMPERE),
                    new Output("largest-current", "Largest current: the design current", Units.AMPERE)),
            DeviceFormulas.NAMED);

    private DeviceFields() {}
}
