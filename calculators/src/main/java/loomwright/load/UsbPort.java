package loomwright.load;

import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * One USB port of an outlet.
 *
 * @param number its place, from 1
 * @param asked the watts entered for Power Delivery; null at a fixed level
 */
record UsbPort(int number, UsbLevel level, UsbCable cable, Quantity asked) {
    private static final String[] EXTENDED = {"epr-28-v", "epr-36-v", "epr-48-v"};
    private static final double HAIR = 1 + 1e-9;

    static String key(int number, String part) {
        return "port-" + Integer.toString(number) + "-" + part;
    }

    static String name(int number) {
        return "Port " + Integer.toString(number);
    }

    /** The port of that number, or null if there is none. */
    static UsbPort read(Entries entries, int number) {
        UsbLevel level = UsbLevel.of(entries.option(key(number, "level")));
        UsbCable cable = UsbCable.of(entries.option(key(number, "cable")));
        Quantity asked = entries.quantity(key(number, "power"));
        if (level != UsbLevel.POWER_DELIVERY) {
            if (asked != null) {
                throw new Refusal(
                        key(number, "power"),
                        name(number) + ": power is " + asked.text() + ", but only a port with Power Delivery has a power of its own: choose that"
                                + ", or empty the power");
            }
            return level == UsbLevel.NONE ? null : new UsbPort(number, level, cable, null);
        }
        if (asked == null) {
            throw new Refusal(key(number, "power"), name(number) + ": power is empty: enter the watts of the port, from its label");
        }
        if (asked.base() > cable.most().base() * HAIR) {
            throw new Refusal(
                    key(number, "power"),
                    name(number) + ": power is " + asked.text(9) + ", but a cable for " + cable.label() + " takes at most " + cable.most().text()
                            + " (" + cable.row().source().text() + "): choose another cable or fewer watts");
        }
        return new UsbPort(number, level, cable, asked);
    }

    Symbol power() {
        return symbol("P", "power of port ", Dimension.POWER);
    }

    Symbol voltage() {
        return symbol("U", "voltage of port ", Dimension.VOLTAGE);
    }

    Symbol current() {
        return symbol("I", "current of port ", Dimension.CURRENT);
    }

    /** Works out what the port gives, and adds its power, voltage and current to the values. */
    Values work(Values values, WorkingBuilder working) {
        return asked == null ? fixed(values, working) : settled(values, working);
    }

    private Values fixed(Values given, WorkingBuilder working) {
        Row row = level.row();
        Quantity volts = working.lookUp(
                name(number) + ": read its voltage from the table", voltage(), row, "voltage", "The kind of port decides.");
        Quantity amperes = working.lookUp(
                name(number) + ": read its current from the table", current(), row, "current", "A device may take up to this.");
        Values values = given.with(voltage(), volts).with(current(), amperes);
        Quantity watts = working.compute(
                name(number) + ": multiply volts and amperes", new Formula(power(), voltage().times(current())), values, Units.WATT,
                "A converter passes on watts, not amperes.");
        return values.with(power(), watts);
    }

    private Values settled(Values given, WorkingBuilder working) {
        Quantity watts = asked.in(Units.WATT);
        Quantity volts = working.lookUp(
                name(number) + ": read the voltage for " + watts.text() + " from the table", voltage(), rule(watts), "voltage",
                "The more watts, the higher the voltage that port and device settle.");
        Values values = given.with(power(), watts).with(voltage(), volts);
        Quantity amperes = working.compute(
                name(number) + ": divide the watts by the volts", new Formula(current(), power().over(voltage())), values, Units.AMPERE,
                "This flows in the USB cable, not in the cable behind the outlet.");
        return values.with(current(), amperes);
    }

    /** The rule for a power: up to 100 W by the power rules, above by the extended range. */
    private static Row rule(Quantity watts) {
        for (Row row : PublishedTables.usbPdPowerRules().rows()) {
            if (watts.base() <= row.quantity("power-to").base() * HAIR) {
                return row;
            }
        }
        Row extended = null;
        for (String step : EXTENDED) {
            extended = PublishedTables.usbPower().row(step);
            if (watts.base() <= extended.quantity("power").base() * HAIR) {
                break;
            }
        }
        return extended;
    }

    private Symbol symbol(String letter, String meaning, Dimension dimension) {
        String written = Integer.toString(number);
        return Symbol.of(letter, written, meaning + written, dimension);
    }
}
