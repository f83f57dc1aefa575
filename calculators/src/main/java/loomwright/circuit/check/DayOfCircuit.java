package loomwright.circuit.check;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.ChargeSource;
import loomwright.circuit.Circuit;
import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.Panel;
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

    /** The day of a circuit whose parts are all understood. */
    public static DayOfCircuit of(Circuit circuit) {
        Supply supply = circuit.battery();
        double volts = supply.resting().base();
        List<LoadDay> loads = new ArrayList<>();
        Solved idle = Solved.of(circuit, Situation.idle(circuit, volts, 0));
        double present = presentWatts(circuit, volts);
        double total = 0;
        for (Node node : circuit.nodes()) {
            if (node.figures() instanceof Load load) {
                Quantity energy = energy(circuit, idle, node, load, present);
                loads.add(new LoadDay(node.id(), energy));
                total += energy == null ? 0 : energy.base();
            }
        }
        Quantity standing = Quantity.ofBase(standing(circuit, volts), Units.WATT_HOUR);
        Quantity day = Quantity.ofBase(total + standing.base(), Units.WATT_HOUR);
        Quantity charge = BatteryDay.charge(day, supply.resting());
        Quantity usable = supply.usable();
        Quantity days = charge.base() > 0 ? Quantity.of(usable.base() / charge.base(), Units.DAY) : null;
        Quantity yield = charged(circuit, supply);
        return new DayOfCircuit(
                List.copyOf(loads), standing, BatteryDay.charge(standing, supply.resting()), day, charge, usable, days, yield);
    }

    /** What charges the battery in a day: the panels behind its controllers, and chargers while they run. */
    private static Quantity charged(Circuit circuit, Supply supply) {
        double joules = supply.solarPower() == null ? 0 : BatteryDay.yield(supply.solarPower(), supply.peakSunHours()).base();
        for (Node node : circuit.nodes()) {
            if (node.figures() instanceof ChargeSource source) {
                joules += source.solarPower() != null
                        ? BatteryDay.yield(source.solarPower(), source.peakSunHours()).base()
                        : source.current().base() * supply.resting().base() * source.hours().base();
            }
        }
        return joules > 0 ? Quantity.ofBase(joules, Units.WATT_HOUR) : null;
    }

    private static Quantity energy(Circuit circuit, Solved idle, Node node, Load load, double presentWatts) {
        double volts = circuit.battery().resting().base();
        Solved alone = Solved.of(circuit, Situation.only(circuit, node, volts, 0));
        if (!alone.exists() || !idle.exists()) {
            return null;
        }
        double own = alone.sourceWatts() - idle.sourceWatts() - presentWatts + load.standing().base() * volts;
        return BatteryDay.energy(Quantity.of(Math.max(0, own), Units.WATT), load.hours(), load.duty());
    }

    /** What panels carry besides the loads of this circuit: counted while a load draws, but no part of that load. */
    private static double presentWatts(Circuit circuit, double volts) {
        double amperes = 0;
        for (Node node : circuit.nodes()) {
            amperes += node.figures() instanceof Panel panel ? panel.presentLoad().base() : 0;
        }
        return amperes * volts;
    }

    /** Of a trigger's power its wire takes a thousandth, which is left out. */
    private static double standing(Circuit circuit, double volts) {
        double joules = 0;
        for (Node node : circuit.nodes()) {
            if (node.figures() instanceof Load load) {
                joules += BatteryDay.energy(Quantity.of(load.standing().base() * volts, Units.WATT), WHOLE_DAY, ALWAYS).base();
            } else if (node.trigger() != null && node.figures() instanceof Switching switching) {
                Quantity power = Quantity.of(switching.triggerAmperes(volts) * volts, Units.WATT);
                joules += BatteryDay.energy(power, switching.hoursOn(), ALWAYS).base();
            }
        }
        return joules;
    }
}
