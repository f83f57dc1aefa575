package loomwright.circuit.check;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Installation;
import loomwright.circuit.Load;
import loomwright.circuit.Supply;
import loomwright.circuit.Switching;
import loomwright.circuit.solve.Situation;
import loomwright.circuit.solve.Solved;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.supply.BatteryDay;

/**
 * The energy of a day: what each load takes from the battery, what flows while nobody uses anything, and how long the battery lasts.
 *
 * <p>Each load is taken alone, with the battery at rest, and what its conductors lose is counted. What other loads lose in the same
 * conductors at the same time is left out.
 *
 * @param loads the loads, in the order of the circuit
 * @param standing energy of triggers, coils and standing currents
 * @param standingCharge the same in ampere-hours
 * @param total energy of the day
 * @param charge the same in ampere-hours
 * @param usable the ampere-hours a plan may take from the battery as full as it is
 * @param days how many such days the battery lasts with nothing charging it; null if a day takes nothing
 * @param yield what the solar panel gives in a day; null if there is none
 */
public record DayOfCircuit(
        List<LoadDay> loads, Quantity standing, Quantity standingCharge, Quantity total, Quantity charge, Quantity usable, Quantity days,
        Quantity yield) {
    private static final Quantity WHOLE_DAY = Quantity.of(24, Units.HOUR);
    private static final Quantity ALWAYS = Quantity.of(100, Units.PERCENT);

    /**
     * A load's part in the day.
     *
     * @param partId the load
     * @param energy what it takes from the battery in a day, with what its conductors lose; null if it cannot work even alone
     */
    public record LoadDay(String partId, Quantity energy) {}

    /** The day of a circuit. */
    public static DayOfCircuit of(Installation installation) {
        Supply supply = installation.supply();
        double volts = supply.resting().base();
        List<LoadDay> loads = new ArrayList<>();
        Solved idle = Solved.of(installation, Situation.idle(installation, volts, 0));
        double total = 0;
        for (int i = 0; i < installation.size(); i++) {
            if (installation.load(i) != null) {
                Quantity energy = energy(installation, idle, i, volts);
                loads.add(new LoadDay(installation.part(i).id(), energy));
                total += energy == null ? 0 : energy.base();
            }
        }
        Quantity standing = Quantity.ofBase(standing(installation, volts), Units.WATT_HOUR);
        Quantity day = Quantity.ofBase(total + standing.base(), Units.WATT_HOUR);
        Quantity charge = BatteryDay.charge(day, supply.resting());
        Quantity usable = supply.usable();
        Quantity days = charge.base() > 0 ? Quantity.of(usable.base() / charge.base(), Units.DAY) : null;
        Quantity yield = supply.solarPower() == null ? null : BatteryDay.yield(supply.solarPower(), supply.peakSunHours());
        return new DayOfCircuit(
                List.copyOf(loads), standing, BatteryDay.charge(standing, supply.resting()), day, charge, usable, days, yield);
    }

    private static Quantity energy(Installation installation, Solved idle, int i, double volts) {
        Solved alone = Solved.of(installation, Situation.only(installation, i, volts, 0));
        if (!alone.exists() || !idle.exists()) {
            return null;
        }
        Load load = installation.load(i);
        double own = alone.point().sourceWatts() - idle.point().sourceWatts() - presentWatts(installation, volts)
                + load.standing().base() * volts;
        return BatteryDay.energy(Quantity.of(Math.max(0, own), Units.WATT), load.hours(), load.duty());
    }

    /** What panels carry besides the loads of this circuit: counted while a load draws, but no part of that load. */
    private static double presentWatts(Installation installation, double volts) {
        double amperes = 0;
        for (int i = 0; i < installation.size(); i++) {
            amperes += installation.panel(i) == null ? 0 : installation.panel(i).presentLoad().base();
        }
        return amperes * volts;
    }

    private static double standing(Installation installation, double volts) {
        double joules = 0;
        for (int i = 0; i < installation.size(); i++) {
            Load load = installation.load(i);
            if (load != null) {
                joules += BatteryDay.energy(Quantity.of(load.standing().base() * volts, Units.WATT), WHOLE_DAY, ALWAYS).base();
            }
            Switching switching = installation.switching(i);
            if (switching != null && installation.trigger(i) >= 0) {
                joules += BatteryDay.energy(triggerPower(switching, volts), switching.hoursOn(), ALWAYS).base();
            }
        }
        return joules;
    }

    /** What a trigger takes; its wire takes a thousandth of it and is left out. */
    private static Quantity triggerPower(Switching switching, double volts) {
        double amperes = switching.coil() != null ? volts / switching.coil().base() : switching.triggerCurrent().base();
        return Quantity.of(amperes * volts, Units.WATT);
    }
}
