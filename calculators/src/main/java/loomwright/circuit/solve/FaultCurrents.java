package loomwright.circuit.solve;

import loomwright.circuit.Installation;
import loomwright.protection.FaultBattery;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;

/**
 * The prospective fault current behind every part, as a range.
 *
 * <p>E/R: highest at the voltage of charging, with the battery at its least resistance, cold copper of the full area, joints, contacts and switches perfect; lowest with
 * the battery at its greatest, conductors as warm as they work, and all joints. Steady direct current; the arc is left out.
 */
public final class FaultCurrents {
    private final double[] leastOhms;
    private final double[] mostOhms;
    private final double restingVolts;
    private final double chargingVolts;
    private final FaultBattery battery;

    private FaultCurrents(Installation installation) {
        int size = installation.size();
        this.battery = installation.supply().resistance();
        this.restingVolts = installation.supply().resting().base();
        // A charger that is on, and a battery just charged, drive more than a battery at rest.
        this.chargingVolts = Math.max(restingVolts, installation.supply().highest().base());
        this.leastOhms = new double[size];
        this.mostOhms = new double[size];
        leastOhms[0] = battery.low() == null ? Double.NaN : battery.low().base();
        mostOhms[0] = battery.high().base();
        for (int i = 1; i < size; i++) {
            leastOhms[i] = leastOhms[installation.feeding(i)] + installation.leastOhms(i);
            mostOhms[i] = mostOhms[installation.feeding(i)] + installation.ohms(i);
        }
    }

    public static FaultCurrents of(Installation installation) {
        return new FaultCurrents(installation);
    }

    /** The highest current into a short circuit behind a part; null if nothing says how little resistance the battery has. */
    public Quantity highest(int part) {
        return Double.isNaN(leastOhms[part]) ? null : Quantity.of(chargingVolts / leastOhms[part], Units.AMPERE);
    }

    /** The lowest current into a short circuit behind a part. */
    public Quantity lowest(int part) {
        return Quantity.of(restingVolts / mostOhms[part], Units.AMPERE);
    }

    /** Where the resistance of the battery comes from; it bounds what the range is worth. */
    public Source source() {
        return battery.source();
    }
}
