package loomwright.circuit.hazard;

import java.util.List;
import loomwright.circuit.Circuit;

/** Mistakes that a short circuit brings to light. */
final class FaultHazards {
    static final List<Hazard> ALL = List.of(
            Hazard.stop("small-breaking-capacity", "A device that cannot break the current of a short circuit at its place", FaultHazards::smallBreaking),
            Hazard.stop("blade-at-the-battery", "A blade fuse-link where a fuse of high breaking capacity belongs", FaultHazards::weakerKind),
            Hazard.stop("breaker-without-its-sheet", "A breaker of which nobody read what it can break, where more than 5 kA may flow", FaultHazards::breaker),
            Hazard.stop("bank-enlarged", "Batteries put beside the first, more than the fuse-links can break", FaultHazards::largerBank),
            Hazard.stop("device-voltage", "A device made for less voltage than the circuit reaches", FaultHazards::lowVoltage),
            Hazard.stop("fault-cannot-open", "A run so long that a short circuit at its end never opens the device", FaultHazards::neverOpens),
            Hazard.stop("lets-too-much-through", "A device that lets more through before it clears than its conductor stands", FaultHazards::letsThrough,
                    "protection.clearing-i2t"),
            Hazard.stop("opens-too-slowly", "A device that takes seconds over a short circuit that its conductor stands for less", FaultHazards::slow,
                    "protection.opening-time"),
            Hazard.caution("fault-opens-late", "A run so long that a short circuit at its end opens the device late", FaultHazards::opensLate));

    private FaultHazards() {}

    private static void smallBreaking(Wiring wiring, Plot plot) {
        for (String device : wiring.all("protection")) {
            long half = Math.round(wiring.prospective(device) / 2);
            Circuit entered = Bench.set(wiring.circuit, device, "rated-voltage", "32 V");
            plot.add(device, Bench.set(entered, device, "breaking-capacity", half + " A"));
        }
    }

    /** Blade fuse-links break 1000 A at 32 V (sheet of a regular blade fuse-link). */
    private static void weakerKind(Wiring wiring, Plot plot) {
        for (String device : wiring.all("protection")) {
            if (wiring.prospective(device) > 1200 && wiring.rating(device) <= 40) {
                Circuit blade = Bench.set(wiring.circuit, device, "device", "blade");
                blade = Bench.set(blade, device, "breaking-capacity", "");
                blade = Bench.set(blade, device, "rated-voltage", "");
                plot.add(device, Bench.set(blade, device, "cold-resistance", ""));
            }
        }
    }

    /** Breakers for small craft break 3 kA to 5 kA as far as anybody remembers. A battery of 100 Ah may give more. */
    private static void breaker(Wiring wiring, Plot plot) {
        double one = wiring.milliohms(wiring.battery, 20);
        for (String device : wiring.all("protection")) {
            double loop = wiring.milliohms(Bench.fedBy(wiring.circuit, device), 20);
            double strong = wiring.number(wiring.battery, "highest-voltage") * 1000 / (loop - one + one / 4);
            if (strong > 5500) {
                Circuit bank = Bench.set(wiring.circuit, wiring.battery, "batteries-in-parallel", "4");
                bank = Bench.set(bank, device, "device", "marine-breaker");
                bank = Bench.set(bank, device, "breaking-capacity", "");
                bank = Bench.set(bank, device, "rated-voltage", "");
                plot.add(device, Bench.set(bank, device, "cold-resistance", ""));
            }
        }
    }

    private static void largerBank(Wiring wiring, Plot plot) {
        double one = wiring.milliohms(wiring.battery, 20);
        for (String device : wiring.all("protection")) {
            double loop = wiring.milliohms(Bench.fedBy(wiring.circuit, device), 20);
            for (int count = 2; count <= 4; count++) {
                double prospective = wiring.number(wiring.battery, "highest-voltage") * 1000 / (loop - one + one / count);
                if (prospective > 1.1 * wiring.number(device, "breaking-capacity")) {
                    Circuit bank = Bench.set(wiring.circuit, wiring.battery, "batteries-in-parallel", Integer.toString(count));
                    plot.add(device, bank);
                    break;
                }
            }
        }
    }

    private static void lowVoltage(Wiring wiring, Plot plot) {
        boolean high = wiring.number(wiring.battery, "battery-voltage") > 20;
        for (String device : wiring.all("protection")) {
            plot.add(device, Bench.set(wiring.circuit, device, "rated-voltage", high ? "16 V" : "12 V"));
        }
    }

    private static void neverOpens(Wiring wiring, Plot plot) {
        faultOf(0.85, wiring, plot);
    }

    private static void opensLate(Wiring wiring, Plot plot) {
        faultOf(1.2, wiring, plot);
    }

    /** Three times what copper in the best insulation stands: k = 143 A·√s/mm² for XLPE (IEC 60364-4-43 Table 43A). */
    private static void letsThrough(Wiring wiring, Plot plot) {
        for (String run : wiring.all("conductor")) {
            String device = wiring.deviceBefore(run);
            if (!device.isEmpty() && Bench.text(wiring.circuit, device, "device").equals("class-t")) {
                long squared = Math.round(3 * Math.pow(143 * wiring.squareMillimetres(run), 2));
                plot.add(run, Bench.set(wiring.circuit, device, "clearing-i2t", squared + " A²s"), List.of(run, device));
            }
        }
    }

    /** Five seconds at the current of a short circuit at its near end, which heats the conductor in less. */
    private static void slow(Wiring wiring, Plot plot) {
        for (String run : wiring.all("conductor")) {
            String device = wiring.deviceBefore(run);
            double fault = wiring.number(wiring.battery, "highest-voltage") * 1000 / wiring.milliohms(Bench.fedBy(wiring.circuit, run), 20);
            double stands = Math.pow(143 * wiring.squareMillimetres(run) / fault, 2);
            if (!device.isEmpty() && stands < 2 && Bench.text(wiring.circuit, device, "device").equals("class-t")) {
                Circuit point = Bench.set(wiring.circuit, device, "opening-current", Math.round(0.9 * fault) + " A");
                plot.add(run, Bench.set(point, device, "opening-time", "5 s"), List.of(run, device));
            }
        }
    }

    /** The last run before a load, so long that a short circuit at its end drives that many times the rating with the battery at rest. */
    private static void faultOf(double share, Wiring wiring, Plot plot) {
        for (String run : wiring.all("conductor")) {
            String device = wiring.deviceBefore(run);
            if (device.isEmpty()) {
                continue;
            }
            double volts = wiring.number(wiring.battery, "battery-voltage");
            double wanted = 1000 * volts / (share * wiring.rating(device)) - wiring.milliohms(Bench.fedBy(wiring.circuit, run), 40);
            double metres = Math.ceil(wanted / Copper.milliohms(wiring.squareMillimetres(run), 1, 40));
            if (metres <= 120) {
                plot.add(run, Bench.set(wiring.circuit, run, "route-length", metres + " m"), List.of(run, device));
            }
        }
    }
}
