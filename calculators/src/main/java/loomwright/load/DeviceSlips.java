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
import static loomwright.load.DeviceSymbols.LARGEST_CURRENT;
import static loomwright.load.DeviceSymbols.LOWEST_VOLTAGE;
import static loomwright.load.DeviceSymbols.SUPPLY_VOLTAGE;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.WorkingBuilder;

/** The known mistakes on the way from a label to the current in the cable. */
final class DeviceSlips {
    private static final Quantity USB = Quantity.of(5, Units.VOLT);
    private static final Quantity LAPTOP = Quantity.of(20, Units.VOLT);
    private static final Quantity NOMINAL = Quantity.of(12, Units.VOLT);

    private static final Formula THOUSAND_AMPERES = new Formula(CURRENT, Expression.number(1000).times(CURRENT));
    private static final Formula DEVICE_SIDE = new Formula(CURRENT, DEVICE_POWER.over(DEVICE_VOLTAGE));
    private static final Formula AT_THE_PORT = new Formula(CURRENT, INPUT_POWER.over(DEVICE_VOLTAGE));
    private static final Formula LABEL_DIVIDED =
            new Formula(DEVICE_POWER, OhmSymbols.VOLTS.over(OhmSymbols.AMPERES).times(Expression.fixed(Quantity.of(1, Units.WATT))));
    private static final Formula MULTIPLIED = new Formula(INPUT_POWER, DEVICE_POWER.times(EFFICIENCY));
    private static final Formula LEFT_OUT = new Formula(INPUT_POWER, DEVICE_POWER);
    private static final Formula USUAL_FOR_LARGEST = new Formula(LARGEST_CURRENT, CURRENT);

    private DeviceSlips() {}

    static void add(WorkingBuilder working, Device device, Values values) {
        addLabel(working, device, values);
        if (device.hasConverter()) {
            addEfficiency(working, values);
        }
        addVoltages(working, device, values);
    }

    private static void addLabel(WorkingBuilder working, Device device, Values values) {
        if (device.power() == null) {
            Quantity amperes = device.current().in(Units.AMPERE);
            Values label = Values.of(DEVICE_VOLTAGE, device.voltage());
            working.slip(
                    "divided-volts-by-amperes", "device-power", "Volts divided by amperes", "Power is volts times amperes.", LABEL_DIVIDED,
                    Values.of(OhmSymbols.VOLTS, Quantity.number(device.voltage().base()))
                            .with(OhmSymbols.AMPERES, Quantity.number(amperes.base())));
            if (device.current().unit() == Units.MILLIAMPERE) {
                working.slip(
                        "milliamperes-as-amperes-label", "device-power", "Milliamperes taken as amperes", "1000 mA make 1 A.",
                        DeviceFormulas.DEVICE_POWER_FROM_LABEL,
                        label.with(DEVICE_CURRENT, Quantity.of(device.current().value(), Units.AMPERE)));
            }
        }
        working.slip(
                "milliamperes-as-amperes", "current", "Milliamperes written as amperes",
                "1000 mA make 1 A: write the unit beside the number.",
                THOUSAND_AMPERES, values);
        if (device.kind() == LoadKind.CONSTANT_POWER) {
            addDeviceSide(working, device, values);
        }
    }

    /** The amperes on the device's side of the converter, taken for those of the supply. */
    private static void addDeviceSide(WorkingBuilder working, Device device, Values values) {
        if (device.voltage() != null) {
            deviceSide(working, "device-side-amperes", values, device.voltage());
        } else if (device.hasConverter()) {
            deviceSide(working, "amperes-at-5-v", values, USB);
            deviceSide(working, "amperes-at-20-v", values, LAPTOP);
        }
    }

    private static void deviceSide(WorkingBuilder working, String key, Values values, Quantity voltage) {
        working.slip(
                "watts-by-" + key, "current", "Watts divided by " + voltage.text() + " and not by the voltage of the supply",
                "The current in the cable is the power divided by the voltage of the cable.", AT_THE_PORT, values.with(DEVICE_VOLTAGE, voltage));
        working.slip(
                key, "current", "Amperes at " + voltage.text() + " taken as amperes of the supply",
                "A converter passes on watts, not amperes: the current differs on its two sides.", DEVICE_SIDE,
                values.with(DEVICE_VOLTAGE, voltage));
    }

    private static void addEfficiency(WorkingBuilder working, Values values) {
        working.slip(
                "efficiency-multiplied", "input-power", "Multiplied by the efficiency",
                "More goes into a converter than comes out, so divide.", MULTIPLIED, values);
        working.slip(
                "efficiency-left-out", "input-power", "The efficiency left out",
                "The heat of the converter comes from the battery as well.",
                LEFT_OUT, values);
        addEfficiency(working, values, "current", CURRENT, SUPPLY_VOLTAGE);
        addEfficiency(working, values, "current-at-lowest", CURRENT_AT_LOWEST, LOWEST_VOLTAGE);
        addEfficiency(working, values, "current-at-highest", CURRENT_AT_HIGHEST, HIGHEST_VOLTAGE);
        addEfficiency(working, values, "largest-current", LARGEST_CURRENT, LOWEST_VOLTAGE);
    }

    private static void addEfficiency(WorkingBuilder working, Values values, String output, Symbol current, Symbol voltage) {
        working.slip(
                "efficiency-multiplied-" + output, output, "Multiplied by the efficiency",
                "More goes into a converter than comes out, so divide.",
                new Formula(current, DEVICE_POWER.times(EFFICIENCY).over(voltage)), values);
        working.slip(
                "efficiency-left-out-" + output, output, "The efficiency left out",
                "The heat of the converter comes from the battery as well.",
                new Formula(current, DEVICE_POWER.over(voltage)), values);
    }

    private static void addVoltages(WorkingBuilder working, Device device, Values values) {
        if (device.supply().base() != NOMINAL.base()) {
            working.slip(
                    "nominal-voltage", "current", "12 V taken where the supply has another voltage",
                    "12 V is a name. Divide by the voltage the supply has.", DeviceFormulas.CURRENT_BY_POWER,
                    values.with(SUPPLY_VOLTAGE, NOMINAL));
        }
        working.slip(
                "supply-voltage-for-lowest", "current-at-lowest", "The usual voltage used in place of the lowest",
                "The question is what flows when the battery is nearly empty.", new Formula(CURRENT_AT_LOWEST, CURRENT), values);
        working.slip(
                "supply-voltage-for-highest", "current-at-highest", "The usual voltage used in place of the highest",
                "The question is what flows while the battery is charged.", new Formula(CURRENT_AT_HIGHEST, CURRENT), values);
        working.slip(
                "usual-for-largest", "largest-current", "Only the usual voltage worked out",
                "Cable and fuse-link have to suit the worst moment.", USUAL_FOR_LARGEST, values);
        addOtherKind(working, device, values);
    }

    private static void addOtherKind(WorkingBuilder working, Device device, Values values) {
        if (device.kind() == LoadKind.CONSTANT_POWER) {
            String name = "Worked out as if it were a heater";
            String words = "This load holds its power: it takes more amperes when the volts fall.";
            working.slip("as-a-resistance-lowest", "current-at-lowest", name, words, proportional(CURRENT_AT_LOWEST, LOWEST_VOLTAGE),
                    values);
            working.slip("as-a-resistance-highest", "current-at-highest", name, words, proportional(CURRENT_AT_HIGHEST, HIGHEST_VOLTAGE),
                    values);
        } else if (device.kind() == LoadKind.RESISTIVE) {
            String name = "Worked out as if it held its power";
            String words = "A fixed resistance draws fewer amperes when the volts fall.";
            working.slip("as-constant-power-lowest", "current-at-lowest", name, words, DeviceFormulas.AT_LOWEST_BY_POWER, values);
            working.slip("as-constant-power-highest", "current-at-highest", name, words, DeviceFormulas.AT_HIGHEST_BY_POWER, values);
        }
    }

    private static Formula proportional(Symbol current, Symbol voltage) {
        return new Formula(current, CURRENT.times(voltage.over(SUPPLY_VOLTAGE)));
    }
}
