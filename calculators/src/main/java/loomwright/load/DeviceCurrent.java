package loomwright.load;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.worked.Calculator;
import loomwright.worked.Candidate;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/**
 * The current a device draws from its supply, over the whole range of the supply voltage.
 *
 * <p>input power = power at the device ÷ efficiency. A load that holds its power draws input power ÷ voltage; a fixed resistance draws in
 * proportion to the voltage; a load that holds its current draws the same always. Starting currents of motors are not counted.
 *
 * @source the definition of power; Ohm's law; the usual range of a 12 V supply is common practice
 */
public final class DeviceCurrent implements Calculator {
    @Override
    public Description description() {
        return DeviceFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Device device = Device.of(entries);
        Quantity devicePower = devicePower(working, device);
        Quantity inputPower = inputPower(working, device, devicePower);
        Values values = Values.of(DeviceSymbols.DEVICE_POWER, devicePower)
                .with(DeviceSymbols.EFFICIENCY, device.efficiency())
                .with(DeviceSymbols.INPUT_POWER, inputPower)
                .with(DeviceSymbols.SUPPLY_VOLTAGE, device.supply())
                .with(DeviceSymbols.LOWEST_VOLTAGE, device.lowest())
                .with(DeviceSymbols.HIGHEST_VOLTAGE, device.highest())
                .with(DeviceSymbols.RATED_VOLTAGE, device.ratedVoltage());
        values = currents(working, device, values);
        Quantity largest = largest(working, device, values);
        values = values.with(DeviceSymbols.LARGEST_CURRENT, largest);

        working.result("device-power", devicePower);
        working.result("input-power", inputPower);
        working.result("current", values.of(DeviceSymbols.CURRENT));
        working.result("current-at-lowest", values.of(DeviceSymbols.CURRENT_AT_LOWEST));
        working.result("current-at-highest", values.of(DeviceSymbols.CURRENT_AT_HIGHEST));
        working.result("largest-current", largest);
        DeviceFindings.add(working, device, values);
        DeviceSlips.add(working, device, values);
        if (largest.base() >= 0.001 && largest.base() <= 1000) {
            working.next("voltage-drop", "What voltage is lost on the way?", "current", largest.text());
        }
    }

    private static Quantity devicePower(WorkingBuilder working, Device device) {
        if (device.power() != null) {
            return working.convert(
                    "Turn the power into watts", device.power(), Units.WATT,
                    "Volts times amperes are watts, not thousandths or thousands.");
        }
        Quantity current = working.convert(
                "Turn the current at the device into amperes", device.current(), Units.AMPERE, "1000 mA make 1 A.");
        return working.compute(
                "Multiply the volts and amperes of the label", DeviceFormulas.DEVICE_POWER_FROM_LABEL,
                Values.of(DeviceSymbols.DEVICE_VOLTAGE, device.voltage()).with(DeviceSymbols.DEVICE_CURRENT, current), Units.WATT,
                "A converter changes volts and amperes; the watts are what it passes on.");
    }

    private static Quantity inputPower(WorkingBuilder working, Device device, Quantity devicePower) {
        if (!device.hasConverter()) {
            return devicePower;
        }
        if (device.planned() != null) {
            working.lookUp(
                    "Read the efficiency of such a converter from the table", DeviceSymbols.EFFICIENCY, device.planned(), "efficiency",
                    "None was entered. The least for its kind errs to the cautious side.");
        }
        return working.compute(
                "Divide by the efficiency of the converter", DeviceFormulas.INPUT_POWER_FROM_DEVICE,
                Values.of(DeviceSymbols.DEVICE_POWER, devicePower).with(DeviceSymbols.EFFICIENCY, device.efficiency()), Units.WATT,
                "The converter turns part of the power into heat, so more goes in than comes out.");
    }

    private static Values currents(WorkingBuilder working, Device device, Values values) {
        return switch (device.kind()) {
            case CONSTANT_POWER -> DeviceSteps.holdsPower(working, values);
            case RESISTIVE -> DeviceSteps.fixedResistance(working, values);
            case CONSTANT_CURRENT -> DeviceSteps.holdsCurrent(working, values);
        };
    }

    private static Quantity largest(WorkingBuilder working, Device device, Values values) {
        Quantity atLowest = values.of(DeviceSymbols.CURRENT_AT_LOWEST);
        Quantity usual = values.of(DeviceSymbols.CURRENT);
        Quantity atHighest = values.of(DeviceSymbols.CURRENT_AT_HIGHEST);
        Quantity largest = atLowest.base() > atHighest.base() ? atLowest : atHighest;
        if (device.lowest().base() == device.highest().base()) {
            return largest;
        }
        List<Candidate> candidates = new ArrayList<>();
        candidates.add(candidate(atLowest, device.lowest(), largest));
        if (device.supply().base() > device.lowest().base() && device.supply().base() < device.highest().base()) {
            candidates.add(candidate(usual, device.supply(), largest));
        }
        candidates.add(candidate(atHighest, device.highest(), largest));
        return working.choose(
                "Take the largest current", candidates, largest, "Cable and fuse-link have to suit the worst moment.",
                Source.commonPractice());
    }

    private static Candidate candidate(Quantity current, Quantity voltage, Quantity largest) {
        boolean taken = current.base() == largest.base();
        return new Candidate(current.text(), taken, "at " + voltage.text() + (taken ? ": no other is larger" : ""));
    }
}
