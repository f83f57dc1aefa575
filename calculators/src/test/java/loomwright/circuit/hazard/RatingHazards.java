package loomwright.circuit.hazard;

import java.util.ArrayList;
import java.util.List;

/** A device guards everything behind it up to the next device: mistakes in the ratings of what it guards. */
final class RatingHazards {
    static final List<Hazard> ALL = List.of(
            guarded("panel", "panel-limit", "device-above-panel", "A fuse panel that may carry less than the device before it"),
            guarded("load", "outlet-rating", "device-above-outlet", "An outlet that may carry less than the device before it"),
            guarded("switch", "continuous-current", "device-above-switch", "A switch or relay that may carry less than the device before it"),
            guarded("isolator", "continuous-current", "device-above-isolator", "An isolating switch that may carry less than the device before it"),
            guarded("joint", "terminal-rating", "device-above-terminal", "A terminal that may carry less than the device before it"),
            Hazard.stop("device-above-holder", "A fuse-link rated above its holder", RatingHazards::holder, "protection.holder-rating"),
            Hazard.stop("panel-overloaded", "More drawn together than the fuse panel may carry", RatingHazards::panelOverloaded),
            Hazard.stop("isolator-overloaded", "An isolating switch for less than the current that flows", RatingHazards::isolatorOverloaded),
            Hazard.stop("bad-joint", "A joint with so much resistance that it burns", RatingHazards::badJoint),
            Hazard.stop("battery-limit", "More drawn together than the electronics of the battery allow", RatingHazards::batteryLimit));

    private RatingHazards() {}

    /** A part rated a tenth below the device that guards it. */
    private static Hazard guarded(String kind, String field, String key, String words) {
        return Hazard.stop(key, words, (wiring, plot) -> {
            for (String part : wiring.all(kind)) {
                String device = wiring.deviceBefore(part);
                if (!device.isEmpty() && 0.9 * wiring.rating(device) > 1.05 * wiring.amperes(part)) {
                    String rating = Math.round(9 * wiring.rating(device)) / 10.0 + " A";
                    plot.add(part, Bench.set(wiring.circuit, part, field, rating), List.of(part, device));
                }
            }
        }, kind + "." + field);
    }

    private static void holder(Wiring wiring, Plot plot) {
        for (String device : wiring.all("protection")) {
            plot.add(device, Bench.set(wiring.circuit, device, "holder-rating", Math.round(9 * wiring.rating(device)) / 10.0 + " A"));
        }
    }

    /** Present loads, so many that with the loads drawn the sum is a tenth above the limit. */
    private static void panelOverloaded(Wiring wiring, Plot plot) {
        for (String panel : wiring.all("panel")) {
            double more = 1.1 * wiring.number(panel, "panel-limit") - wiring.amperes(panel);
            plot.add(panel, Bench.set(wiring.circuit, panel, "present-load", Math.ceil(more) + " A"));
        }
    }

    private static void isolatorOverloaded(Wiring wiring, Plot plot) {
        for (String isolator : wiring.all("isolator")) {
            String most = Math.round(8 * wiring.amperes(isolator)) / 10.0 + " A";
            plot.add(isolator, Bench.set(wiring.circuit, isolator, "continuous-current", most));
        }
    }

    /** 30 mΩ, or as much as makes 5 W: five times what softens plastic. */
    private static void badJoint(Wiring wiring, Plot plot) {
        for (String joint : wiring.all("joint")) {
            double amperes = wiring.amperes(joint);
            if (amperes > 1.5) {
                double milliohms = Math.max(30, Math.ceil(5000 / (amperes * amperes)));
                List<String> blamed = new ArrayList<>(wiring.loadsBehind(joint));
                blamed.add(joint);
                plot.add(joint, Bench.set(wiring.circuit, joint, "joint-resistance", milliohms + " mΩ"), blamed);
            }
        }
    }

    private static void batteryLimit(Wiring wiring, Plot plot) {
        List<String> blamed = new ArrayList<>(List.of(wiring.battery));
        if (!Double.isNaN(wiring.number(wiring.battery, "battery-limit"))) {
            double limit = Math.round(7 * wiring.amperes(wiring.battery)) / 10.0;
            plot.add(wiring.battery, Bench.set(wiring.circuit, wiring.battery, "battery-limit", limit + " A"), blamed);
        }
    }
}
