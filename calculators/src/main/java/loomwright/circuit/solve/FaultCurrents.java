package loomwright.circuit.solve;

import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.protection.FaultBattery;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;

/**
 * The prospective fault current behind every part, as a range.
 *
 * <p>E/R: highest at the voltage of charging, with the battery at its least resistance, cold copper of the full area, joints, contacts and switches perfect; lowest at
 * the voltage of an empty battery, with
 * the battery at its greatest, conductors as warm as they work, and all joints. Steady direct current; the arc is left out.
 */
public final class FaultCurrents {
    private final double[] leastOhms;
    private final double[] mostOhms;
    private final double emptyVolts;
    private final double chargingVolts;
    private final FaultBattery battery;

    private FaultCurrents(Circuit circuit) {
        int size = circuit.nodes().size();
        this.battery = circuit.battery().resistance();
        double restingVolts = circuit.battery().resting().base();
        this.emptyVolts = Math.min(restingVolts, circuit.battery().lowest().base());
        // A charger that is on, and a battery just charged, drive more than a battery at rest.
        this.chargingVolts = Math.max(restingVolts, circuit.battery().highest().base());
        this.leastOhms = new double[size];
        this.mostOhms = new double[size];
        for (Node node : circuit.nodes()) {
            boolean first = node.parent() == null;
            double leastBefore = first ? leastInside() : leastOhms[node.parent().order()];
            double mostBefore = first ? battery.high().base() : mostOhms[node.parent().order()];
            leastOhms[node.order()] = leastBefore + node.figures().leastOhms();
            mostOhms[node.order()] = mostBefore + node.figures().ohms();
        }
    }

    private double leastInside() {
        return battery.low() == null ? Double.NaN : battery.low().base();
    }

    /** @param circuit one whose parts can all be understood */
    public static FaultCurrents of(Circuit circuit) {
        return new FaultCurrents(circuit);
    }

    /** The highest current into a short circuit behind a part; null if nothing says how little resistance the battery has. */
    public Quantity highest(Node node) {
        double ohms = leastOhms[node.order()];
        return Double.isNaN(ohms) ? null : Quantity.of(chargingVolts / ohms, Units.AMPERE);
    }

    /** The lowest current into a short circuit behind a part. */
    public Quantity lowest(Node node) {
        return Quantity.of(emptyVolts / mostOhms[node.order()], Units.AMPERE);
    }

    /** The lowest current that has to open a device: behind it, and before any other. */
    public Quantity lowestBehind(Node device) {
        Quantity lowest = lowest(device);
        for (Node node : device.protectedBehind()) {
            Quantity there = lowest(node);
            lowest = there.base() < lowest.base() ? there : lowest;
        }
        return lowest;
    }

    /** Where the resistance of the battery comes from; it bounds what the range is worth. */
    public Source source() {
        return battery.source();
    }
}
