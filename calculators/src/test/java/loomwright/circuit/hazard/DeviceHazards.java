package loomwright.circuit.hazard;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;

/** Mistakes in the choice and the place of a fuse-link or breaker. */
final class DeviceHazards {
    static final List<Hazard> ALL = List.of(
            Hazard.stop("larger-device", "A fuse-link or breaker rated above what its conductor carries", DeviceHazards::larger),
            Hazard.stop("far-larger-device", "A fuse-link rated above its conductor and above the one that feeds it", DeviceHazards::farLarger),
            Hazard.stop("device-removed", "A fuse-link left out", DeviceHazards::removed),
            Hazard.stop("device-at-the-far-end", "A fuse-link at the far end of the run it should protect", DeviceHazards::farEnd),
            Hazard.stop("boat-rule-with-other-table", "A fuse-link of up to 150 % of an ampacity, with a table that this boat rule is not made for", DeviceHazards::boatRule,
                    "supply.fuse-rule"),
            Hazard.caution("way-above-feed", "A fuse-link of a way rated above the one that feeds the panel", DeviceHazards::wayAboveFeed),
            Hazard.caution("not-selective", "Two fuse-links of one kind and rating, one behind the other, so that either may open first", DeviceHazards::notSelective),
            Hazard.stop("device-overloaded", "A fuse-link rated below the current that flows", DeviceHazards::overloaded),
            Hazard.caution("device-loaded-for-hours", "A fuse-link loaded to its rating for hours", DeviceHazards::loadedForHours),
            Hazard.caution("breaker-loaded-as-a-fuse", "A breaker loaded for hours to more than it holds", DeviceHazards::breakerLoaded));

    private DeviceHazards() {}

    private static Circuit rated(Circuit circuit, String device, double amperes) {
        boolean blade = Bench.text(circuit, device, "device").equals("blade");
        Circuit kind = blade && amperes > 40 ? Bench.set(circuit, device, "device", "large-blade") : circuit;
        return Bench.set(kind, device, "rating", amperes + " A");
    }

    private static void larger(Wiring wiring, Plot plot) {
        for (String device : wiring.all("protection")) {
            double least = wiring.leastAmpacity(device);
            if (!wiring.guarded(device).isEmpty() && wiring.ratingBefore(device) > least) {
                plot.add(device, rated(wiring.circuit, device, Wiring.nextAbove(least)));
            }
        }
    }

    /** Above what feeds it as well, so that the device before it is the smaller of the two, and yet too large for this conductor. */
    private static void farLarger(Wiring wiring, Plot plot) {
        for (String device : wiring.all("protection")) {
            double before = wiring.ratingBefore(device);
            if (Double.isFinite(before) && Double.isFinite(wiring.leastAmpacity(device)) && before > wiring.leastAmpacity(device)) {
                plot.add(device, rated(wiring.circuit, device, Wiring.nextAbove(before)));
            }
        }
    }

    private static void removed(Wiring wiring, Plot plot) {
        for (String device : wiring.all("protection")) {
            if (isNeeded(wiring, device)) {
                plot.add(device, Bench.without(wiring.circuit, device), blamed(wiring, device));
            }
        }
    }

    private static void farEnd(Wiring wiring, Plot plot) {
        for (String device : wiring.all("protection")) {
            for (String load : wiring.loadsBehind(device)) {
                if (isNeeded(wiring, device) && wiring.deviceBefore(load).equals(device)) {
                    Circuit gone = Bench.without(wiring.circuit, device);
                    Circuit moved = Bench.insertedBefore(gone, "protection", load);
                    String fresh = Bench.fresh(gone, moved);
                    for (String field : List.of("device", "rating", "breaking-capacity", "rated-voltage")) {
                        moved = Bench.set(moved, fresh, field, Bench.text(wiring.circuit, device, field));
                    }
                    List<String> blamed = blamed(wiring, device);
                    blamed.add(fresh);
                    plot.add(device, moved, blamed);
                    break;
                }
            }
        }
    }

    /** Whether without it a conductor is left to a larger device than it stands, or runs on unprotected beyond the 1.016 m of 33 CFR 183.455. */
    private static boolean isNeeded(Wiring wiring, String device) {
        return wiring.deviceBefore(device).isEmpty()
                ? wiring.guarded(device).stream().anyMatch(run -> wiring.number(run, "route-length") > 1.05)
                : wiring.ratingBefore(device) > wiring.leastAmpacity(device);
    }

    private static List<String> blamed(Wiring wiring, String device) {
        List<String> blamed = new ArrayList<>(wiring.guarded(device));
        String before = wiring.deviceBefore(device);
        if (!before.isEmpty()) {
            blamed.add(before);
        }
        return blamed;
    }

    /** The free-air table gives 25, 30, 40 and 60 A to 14, 12, 10 and 8 AWG with 60 °C insulation; 150 % of that is no rule of anyone. */
    private static void boatRule(Wiring wiring, Plot plot) {
        for (String run : wiring.all("conductor")) {
            String device = wiring.deviceBefore(run);
            double freeAir = switch ((int) Math.round(10 * wiring.squareMillimetres(run))) {
                case 21 -> 25;
                case 33 -> 30;
                case 53 -> 40;
                case 84 -> 60;
                default -> 0;
            };
            boolean alone = !device.isEmpty() && wiring.ratingBefore(device) > freeAir;
            if (freeAir > 0 && !wiring.metric(run) && alone) {
                Circuit circuit = Bench.set(wiring.circuit, wiring.battery, "fuse-rule", "33-cfr-183");
                circuit = Bench.set(circuit, run, "rule-set", "nec-free-air");
                circuit = Bench.set(circuit, run, "insulation-temperature", "t60");
                plot.add(device, rated(circuit, device, Wiring.nextAbove(freeAir)));
            }
        }
    }

    private static void wayAboveFeed(Wiring wiring, Plot plot) {
        for (String device : wiring.all("protection")) {
            String before = wiring.deviceBefore(device);
            double above = before.isEmpty() ? 0 : Wiring.nextAbove(wiring.rating(before));
            if (above > 0 && above <= wiring.leastAmpacity(device)) {
                plot.add(device, rated(wiring.circuit, device, above), List.of(device, before));
            }
        }
    }

    private static void notSelective(Wiring wiring, Plot plot) {
        for (String device : wiring.all("protection")) {
            String before = wiring.deviceBefore(device);
            if (!before.isEmpty() && wiring.rating(device) < wiring.rating(before) && wiring.rating(device) > 1.3 * wiring.amperes(before)) {
                Circuit alike = Bench.set(wiring.circuit, before, "device", Bench.text(wiring.circuit, device, "device"));
                plot.add(device, rated(alike, before, wiring.rating(device)), List.of(device, before));
            }
        }
    }

    private static void overloaded(Wiring wiring, Plot plot) {
        for (String device : wiring.all("protection")) {
            double small = Wiring.nextBelow(wiring.amperes(device) / 1.15);
            if (small > 0) {
                plot.add(device, rated(wiring.circuit, device, small));
            }
        }
    }

    private static void loadedForHours(Wiring wiring, Plot plot) {
        loaded(wiring, plot, 0.92, "");
    }

    /** The trip note of a marine breaker says that it holds 70 %. */
    private static void breakerLoaded(Wiring wiring, Plot plot) {
        loaded(wiring, plot, 0.73, "marine-breaker");
    }

    private static void loaded(Wiring wiring, Plot plot, double share, String kind) {
        for (String device : wiring.all("protection")) {
            boolean meant = kind.isEmpty() || Bench.text(wiring.circuit, device, "device").equals(kind);
            if (meant && wiring.amperes(device) > 1) {
                Circuit circuit = wiring.circuit;
                for (String load : wiring.loadsBehind(device)) {
                    circuit = Bench.set(circuit, load, "hours", "6 h");
                }
                double rating = Math.round(10 * wiring.amperes(device) / share) / 10.0;
                plot.add(device, Bench.set(circuit, device, "rating", rating + " A"));
            }
        }
    }
}
