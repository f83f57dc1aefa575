package loomwright.circuit.hazard;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;

/** Mistakes in what is joined to what. */
final class PlaceHazards {
    static final List<Hazard> ALL = List.of(
            Hazard.stop("load-on-the-battery", "A load joined straight to the battery", PlaceHazards::loadOnBattery),
            Hazard.stop("run-on-the-battery", "A run joined straight to the battery, without a device", PlaceHazards::runOnBattery),
            Hazard.stop("panel-on-the-battery", "A fuse panel joined straight to the battery", PlaceHazards::panelOnBattery),
            Hazard.stop("run-before-the-device", "Metres of cable between the battery and its first device", PlaceHazards::runBeforeDevice),
            Hazard.caution("short-run-in-the-open", "Half a metre of cable in the open between the battery and its first device", PlaceHazards::shortRunBeforeDevice),
            Hazard.caution("no-isolator", "No switch to part the battery from all that it feeds", PlaceHazards::noIsolator));

    private PlaceHazards() {}

    private static void loadOnBattery(Wiring wiring, Plot plot) {
        onBattery("load", wiring, plot);
    }

    private static void runOnBattery(Wiring wiring, Plot plot) {
        onBattery("conductor", wiring, plot);
    }

    private static void panelOnBattery(Wiring wiring, Plot plot) {
        onBattery("panel", wiring, plot);
    }

    private static void onBattery(String kind, Wiring wiring, Plot plot) {
        for (String part : wiring.all(kind)) {
            boolean longEnough = !kind.equals("conductor") || wiring.number(part, "route-length") > 1.05;
            if (longEnough && !Bench.fedBy(wiring.circuit, part).equals(wiring.battery)) {
                plot.add(part, Bench.moved(wiring.circuit, part, wiring.battery));
            }
        }
    }

    /** 33 CFR 183.455 allows 0.178 m, and 1.016 m in a sheath. */
    private static void runBeforeDevice(Wiring wiring, Plot plot) {
        runBefore("2.5 m", wiring, plot);
    }

    private static void shortRunBeforeDevice(Wiring wiring, Plot plot) {
        runBefore("0.5 m", wiring, plot);
    }

    private static void runBefore(String length, Wiring wiring, Plot plot) {
        for (String device : wiring.all("protection")) {
            if (!wiring.deviceBefore(device).isEmpty()) {
                continue;
            }
            Circuit with = Bench.insertedBefore(wiring.circuit, "conductor", device);
            String run = Bench.fresh(wiring.circuit, with);
            with = Bench.set(with, run, "size", "16 mm²");
            with = Bench.set(with, run, "insulation-temperature", "t105");
            with = Bench.set(with, run, "route-length", length);
            plot.add(device, with, List.of(run, device));
        }
    }

    /** A breaker parts what is behind it as well, so only where there is none. */
    private static void noIsolator(Wiring wiring, Plot plot) {
        List<String> isolators = wiring.all("isolator");
        boolean breaker = wiring.all("protection").stream().anyMatch(id -> Bench.text(wiring.circuit, id, "device").equals("marine-breaker"));
        if (isolators.size() == 1 && !breaker) {
            List<String> blamed = new ArrayList<>(Bench.ids(wiring.circuit));
            blamed.removeAll(isolators);
            plot.add(isolators.get(0), Bench.without(wiring.circuit, isolators.get(0)), blamed);
        }
    }
}
