package loomwright.circuit.hazard;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;

/** Mistakes in what is joined to the circuit, and in how much is asked of the battery. */
final class LoadHazards {
    static final List<Hazard> ALL = List.of(
            Hazard.stop("12-v-load-on-24-v", "A 12 V load on a 24 V battery", LoadHazards::lowOnHigh),
            Hazard.caution("24-v-load-on-12-v", "A 24 V load on a 12 V battery", LoadHazards::highOnLow),
            Hazard.stop("heavier-load", "A load far heavier than its conductors and devices were chosen for", LoadHazards::heavier),
            Hazard.stop("start-opens-the-device", "A motor whose start opens its fuse-link", LoadHazards::start),
            Hazard.stop("load-starved", "A load that needs more voltage than is left for it", LoadHazards::starved),
            Hazard.caution("standing-draw", "A standing draw that empties the battery within days, with everything switched off", LoadHazards::standing),
            Hazard.caution("day-too-large", "A day that takes more than the battery may give", LoadHazards::day),
            Hazard.caution("usb-above-shared-limit", "USB ports that together deliver more than they share", LoadHazards::usbShared,
                    "load.ports-power", "load.ports-limit"),
            Hazard.caution("usb-watts-as-12-v-watts", "Watts at the USB ports taken for watts at 12 V", LoadHazards::usbWatts,
                    "load.ports-power", "load.converter-efficiency"));

    private LoadHazards() {}

    private static boolean high(Wiring wiring) {
        return wiring.number(wiring.battery, "battery-voltage") > 20;
    }

    private static void lowOnHigh(Wiring wiring, Plot plot) {
        for (String load : high(wiring) ? wiring.all("load") : List.<String>of()) {
            plot.add(load, Bench.set(wiring.circuit, load, "rated-voltage", "12 V"));
        }
    }

    private static void highOnLow(Wiring wiring, Plot plot) {
        for (String load : high(wiring) ? List.<String>of() : wiring.all("load")) {
            Circuit wrong = Bench.set(wiring.circuit, load, "lowest-working-voltage", "");
            plot.add(load, Bench.set(wrong, load, "rated-voltage", "24 V"));
        }
    }

    /** Half as much again as the device before it is rated, and at most 100 A. */
    private static void heavier(Wiring wiring, Plot plot) {
        for (String load : wiring.all("load")) {
            double amperes = 1.5 * wiring.ratingBefore(load);
            Circuit circuit = wiring.circuit;
            for (String field : List.of("power", "current", "start-current", "lowest-working-voltage")) {
                circuit = Bench.set(circuit, load, field, "");
            }
            circuit = Bench.set(circuit, load, "load-kind", "constant-current");
            List<String> blamed = new ArrayList<>(List.of(load));
            for (String at = Bench.fedBy(circuit, load); !at.isEmpty(); at = Bench.fedBy(circuit, at)) {
                blamed.add(at);
            }
            plot.add(load, Bench.set(circuit, load, "current", amperes + " A"), blamed);
        }
    }

    /** Four times the rating for 5 s: a blade fuse-link has opened by 0.5 s (from memory), one of 10 A by 5 s at twice its rating (in print). */
    private static void start(Wiring wiring, Plot plot) {
        for (String load : wiring.all("load")) {
            String device = wiring.deviceBefore(load);
            if (!Double.isNaN(wiring.number(load, "start-current")) && Bench.text(wiring.circuit, device, "device").equals("blade")) {
                Circuit slow = Bench.set(wiring.circuit, load, "start-time", "5 s");
                plot.add(load, Bench.set(slow, load, "start-current", 4 * wiring.rating(device) + " A"), List.of(load, device));
            }
        }
    }

    private static void starved(Wiring wiring, Plot plot) {
        for (String load : wiring.all("load")) {
            double lowest = wiring.number(wiring.battery, "lowest-voltage");
            plot.add(load, Bench.set(wiring.circuit, load, "lowest-working-voltage", lowest + 0.2 + " V"));
        }
    }

    /** So much that half the capacity is gone in three days; the field takes 1 A at most. */
    private static void standing(Wiring wiring, Plot plot) {
        for (String load : wiring.all("load")) {
            double amperes = wiring.number(wiring.battery, "capacity") / 3600 / 2 / 72;
            String text = Math.min(1000, Math.round(1000 * amperes)) + " mA";
            plot.add(load, Bench.set(wiring.circuit, load, "standing-current", text), List.of(load, wiring.battery));
        }
    }

    private static void day(Wiring wiring, Plot plot) {
        for (String load : wiring.all("load")) {
            double wattHours = 24 * wiring.amperes(load) * wiring.number(wiring.battery, "battery-voltage");
            double all = wiring.number(wiring.battery, "capacity") / 3600 * wiring.number(wiring.battery, "battery-voltage");
            if (wattHours > 1.2 * all) {
                Circuit always = Bench.set(wiring.circuit, load, "hours", "24 h");
                plot.add(load, Bench.set(always, load, "duty", "100 %"), List.of(load, wiring.battery));
            }
        }
        plot.add(wiring.battery, Bench.set(wiring.circuit, wiring.battery, "capacity", smallCapacity(wiring)));
    }

    /** A quarter of what the loads take in a day. */
    private static String smallCapacity(Wiring wiring) {
        double ampereHours = 0;
        for (String load : wiring.all("load")) {
            ampereHours += wiring.amperes(load) * wiring.number(load, "hours") / 3600 * wiring.number(load, "duty");
        }
        return Math.max(1, Math.round(ampereHours / 4)) + " Ah";
    }

    private static void usbShared(Wiring wiring, Plot plot) {
        for (String load : usb(wiring)) {
            Circuit shared = Bench.set(ports(wiring, load), load, "ports-limit", "40 W");
            plot.add(load, shared);
        }
    }

    private static void usbWatts(Wiring wiring, Plot plot) {
        for (String load : usb(wiring)) {
            plot.add(load, Bench.set(ports(wiring, load), load, "converter-efficiency", "100 %"));
        }
    }

    private static Circuit ports(Wiring wiring, String load) {
        return Bench.set(Bench.set(wiring.circuit, load, "power", ""), load, "ports-power", "50 W");
    }

    private static List<String> usb(Wiring wiring) {
        return wiring.all("load").stream().filter(id -> Bench.title(wiring.circuit, id).contains("USB")).toList();
    }
}
