package loomwright.circuit;

import loomwright.conductor.ConductorFigures;
import loomwright.load.Converter;
import loomwright.load.LoadKind;
import loomwright.load.PortsLoad;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.switching.SwitchedLoad;
import loomwright.table.Row;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;

/**
 * A load.
 *
 * @param kind how its current follows the voltage
 * @param watts the power it holds; 0 if it holds none
 * @param amperes the current it holds; 0 if it holds none
 * @param siemens its conductance; 0 if it has no fixed resistance
 * @param ratedVoltage the voltage its figure holds for
 * @param together whether it may be on with all others marked so
 * @param allowance the row of the voltage drop allowed
 * @param startCurrent its current at the start, or null
 * @param lowestWorking the lowest voltage it works at, or null
 * @param highestWorking the highest voltage it stands, or null
 * @param outletRating what its outlet may carry, or the largest device its maker allows; null if no one said
 * @param switchedAs what a switch before it has to make and break
 * @param ports what its USB ports give, or null if it was not entered by them
 */
public record Load(
        LoadKind kind, double watts, double amperes, double siemens, Quantity ratedVoltage, Quantity hours, Quantity duty, boolean together,
        Row allowance, Quantity startCurrent, Quantity startTime, Quantity lowestWorking, Quantity highestWorking, Quantity standing,
        Quantity outletRating, PortsLoad ports, SwitchedLoad switchedAs)
        implements Figures {

    /**
     * A load, as it was entered.
     *
     * @throws Refusal unless exactly one of power, current, resistance and power at the ports was entered
     */
    public static Load of(Part part) {
        Entries entries = part.entries();
        LoadKind kind = LoadKind.of(entries.option(LoadEntries.FIELDS.get(0).key()));
        double volts = entries.quantity("rated-voltage").base();
        double amperes = ratedAmperes(entries, volts);
        return new Load(
                kind, kind == LoadKind.CONSTANT_POWER ? amperes * volts : 0, kind == LoadKind.CONSTANT_CURRENT ? amperes : 0,
                kind == LoadKind.RESISTIVE ? amperes / volts : 0, entries.quantity("rated-voltage"), entries.quantity("hours"),
                entries.quantity("duty"), entries.choice("use").equals("together"),
                ConductorFigures.allowance(entries.choice("allowance")), entries.quantity("start-current"), entries.quantity("start-time"),
                entries.quantity("lowest-working-voltage"), entries.quantity("highest-working-voltage"), entries.quantity("standing-current"),
                entries.quantity("outlet-rating"), ports(entries), switchedAs(entries, kind));
    }

    /** What its USB ports take, if it was entered by them; null otherwise. */
    private static PortsLoad ports(Entries entries) {
        Quantity asked = entries.quantity(LoadEntries.PORTS_POWER.key());
        if (asked == null) {
            return null;
        }
        Quantity limit = entries.quantity("ports-limit");
        Quantity efficiency = entries.quantity("converter-efficiency");
        return efficiency == null
                ? PortsLoad.of(asked, limit, Converter.named(entries.choice("converter")))
                : PortsLoad.of(asked, limit, efficiency);
    }

    private static SwitchedLoad switchedAs(Entries entries, LoadKind kind) {
        SwitchedLoad said = SwitchedLoad.CHOICES.find(entries.option("switched-as"));
        if (said != null) {
            return said;
        }
        if (entries.quantity("start-current") != null) {
            return SwitchedLoad.MOTOR;
        }
        return kind == LoadKind.RESISTIVE ? SwitchedLoad.RESISTIVE : SwitchedLoad.CAPACITIVE;
    }

    private static double ratedAmperes(Entries entries, double volts) {
        Quantity power = entries.quantity(LoadEntries.POWER.key());
        Quantity current = entries.quantity(LoadEntries.CURRENT.key());
        Quantity resistance = entries.quantity(LoadEntries.RESISTANCE.key());
        PortsLoad ports = ports(entries);
        int given = (power == null ? 0 : 1) + (current == null ? 0 : 1) + (resistance == null ? 0 : 1) + (ports == null ? 0 : 1);
        if (given != 1) {
            throw new Refusal(
                    LoadEntries.POWER.key(), given == 0
                            ? "Power, current and resistance of the load are all empty, and so is the power at its ports: enter one of the four"
                            : "More than one of power, current, resistance and power at the ports is entered: keep one and empty the others");
        }
        if (ports != null) {
            return ports.input().base() / volts;
        }
        if (power != null) {
            return power.base() / volts;
        }
        return current != null ? current.base() : volts / resistance.base();
    }

    /** What it takes at a voltage, in watts, while it draws. */
    public Quantity power(double volts) {
        return Quantity.of(watts + volts * (amperes + volts * siemens), Units.WATT);
    }

    /** Not by its figures: printing a number the library's way costs the page more than all of this. */
    @Override
    public String toString() {
        return kind.name();
    }

    /** What it takes at a voltage, in amperes, while it draws. */
    public Quantity current(double volts) {
        return Quantity.of(power(volts).value() / volts, Units.AMPERE);
    }

    @Override
    public double ohms() {
        return 0;
    }

    @Override
    public double leastOhms() {
        return 0;
    }

    @Override
    public String inPartsList() {
        return "";
    }

    @Override
    public String onLabel() {
        return "";
    }
}
