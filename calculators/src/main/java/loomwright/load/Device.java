package loomwright.load;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;

/**
 * What was entered about a device and its supply, checked against itself.
 *
 * @param power the watts entered, or null
 * @param voltage the volts at the device, or null
 * @param current the amperes at the device, or null
 * @param planned the row that the efficiency was taken from because none was entered, or null
 */
record Device(
        Quantity power, Quantity voltage, Quantity current, Quantity efficiency, Quantity supply, Quantity lowest, Quantity highest,
        LoadKind kind, Row planned) {

    /**
     * Reads the entries.
     *
     * @throws Refusal if they are too few, too many or contradict each other
     */
    static Device of(Entries entries) {
        LoadKind kind = LoadKind.of(entries.option("load-kind"));
        Row planned = entries.has("efficiency") ? null : converter(entries, kind).row();
        Quantity efficiency = entries.has("efficiency")
                ? entries.quantity("efficiency") : planned == null ? Quantity.of(100, Units.PERCENT) : planned.quantity("efficiency");
        Device device = new Device(
                entries.quantity("power"), entries.quantity("device-voltage"), entries.quantity("device-current"),
                efficiency, entries.quantity("supply-voltage"), entries.quantity("lowest-voltage"), entries.quantity("highest-voltage"), kind,
                planned);
        device.refusePower();
        device.refuseOrder();
        device.refuseVoltage();
        return device;
    }

    /**
     * What stands before the device. Where no one knows, a load that holds its power is taken to have a converter, unless its label gives a
     * voltage that the supply has.
     */
    private static Converter converter(Entries entries, LoadKind kind) {
        Converter chosen = Converter.named(entries.choice("converter"));
        Quantity volts = entries.quantity("device-voltage");
        boolean direct = kind != LoadKind.CONSTANT_POWER
                || volts != null && volts.base() >= entries.quantity("lowest-voltage").base() && volts.base() <= entries.quantity("highest-voltage").base();
        return chosen == Converter.NOT_KNOWN && direct ? Converter.NONE : chosen;
    }

    /** The voltage at which a load that does not hold its power takes what its label says. */
    Quantity ratedVoltage() {
        return voltage == null ? supply : voltage;
    }

    boolean hasConverter() {
        return efficiency.base() < 1;
    }

    private void refusePower() {
        if (power != null && current != null) {
            throw new Refusal(
                    "device-current",
                    "Current at the device is not needed beside Power of the device: empty it, or empty the power and enter Voltage at the device");
        }
        if (power == null && voltage == null && current == null) {
            throw new Refusal(
                    "power", "Power of the device is empty: enter the watts of the label, or Voltage at the device and Current at the device");
        }
        if (power == null && (voltage == null || current == null)) {
            String missing = voltage == null ? "Voltage at the device" : "Current at the device";
            throw new Refusal(
                    voltage == null ? "device-voltage" : "device-current",
                    missing + " is empty: the label's volts and amperes make its watts together. Enter both, or Power of the device");
        }
    }

    private void refuseOrder() {
        if (lowest.base() > supply.base()) {
            throw new Refusal(
                    "lowest-voltage",
                    "Lowest supply voltage is " + lowest.text() + ", above the Supply voltage of " + supply.text()
                            + ": enter a value at or below it");
        }
        if (highest.base() < supply.base()) {
            throw new Refusal(
                    "highest-voltage",
                    "Highest supply voltage is " + highest.text() + ", below the Supply voltage of " + supply.text()
                            + ": enter a value at or above it");
        }
    }

    /** A heater for 5 V cannot sit on a 12 V supply: between the two there is a converter, which holds its power. */
    private void refuseVoltage() {
        boolean outside = voltage != null && (voltage.base() < lowest.base() || voltage.base() > highest.base());
        if (kind != LoadKind.CONSTANT_POWER && outside) {
            throw new Refusal(
                    "device-voltage",
                    "Voltage at the device is " + voltage.text() + ", but the supply gives " + lowest.text() + " to " + highest.text()
                            + ": then a converter stands between. Choose the load that holds its power, and enter the converter's efficiency");
        }
        if (kind != LoadKind.CONSTANT_POWER && hasConverter()) {
            throw new Refusal(
                    planned == null ? "efficiency" : "converter",
                    "Efficiency of the converter is " + efficiency.text()
                            + ": a load behind a converter holds its power. Choose that, or no converter and no efficiency");
        }
    }
}
