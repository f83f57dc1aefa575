package loomwright.circuit.hazard;

import java.util.List;
import loomwright.circuit.Circuit;

/** Mistakes in switches, relays and their triggers. */
final class SwitchHazards {
    static final List<Hazard> ALL = List.of(
            Hazard.caution("small-switch-for-motor", "A switch with no reserve for a motor", SwitchHazards::motor),
            Hazard.caution("small-switch-for-lamp", "A switch with no reserve for a filament lamp", SwitchHazards::lamp, "load.switched-as"),
            Hazard.stop("switch-overloaded", "A switch or relay for less than the current that flows", SwitchHazards::overloaded),
            Hazard.stop("hot-solid-state-switch", "A solid-state switch without the heat sink it needs", SwitchHazards::hot),
            Hazard.stop("trigger-wire-thin", "A trigger wire too thin for its fuse-link", SwitchHazards::triggerThin),
            Hazard.stop("trigger-fuse-large", "A trigger wire behind a fuse-link of 30 A", SwitchHazards::triggerFuseLarge),
            Hazard.stop("trigger-unfused", "A trigger wire without a fuse-link", SwitchHazards::triggerUnfused, "switch.fuse-rating?"),
            Hazard.stop("trigger-missing", "A relay that nothing turns on", SwitchHazards::triggerMissing),
            Hazard.stop("trigger-behind-itself", "A relay whose trigger is live only when it is on", SwitchHazards::triggerBehind));

    private SwitchHazards() {}

    private static List<String> triggered(Wiring wiring) {
        return wiring.all("switch").stream().filter(id -> !Bench.triggeredFrom(wiring.circuit, id).isEmpty()).toList();
    }

    /** FAA AC 43.13-1B Table 11-4: a switch for a motor at 12 V is rated twice, at 28 V three times its continuous current. */
    private static void motor(Wiring wiring, Plot plot) {
        for (String part : wiring.all("switch")) {
            boolean motor = wiring.loadsBehind(part).stream().anyMatch(load -> !Double.isNaN(wiring.number(load, "start-current")));
            if (motor) {
                small(wiring, plot, part);
            }
        }
    }

    /** FAA AC 43.13-1B Table 11-4: five times at 12 V, eight times at 28 V for a lamp. */
    private static void lamp(Wiring wiring, Plot plot) {
        for (String part : wiring.all("switch")) {
            for (String load : wiring.loadsBehind(part)) {
                if (Bench.text(wiring.circuit, load, "load-kind").equals("resistive")) {
                    small(new Wiring(Bench.set(wiring.circuit, load, "switched-as", "lamp")), plot, part);
                }
            }
        }
    }

    private static void small(Wiring wiring, Plot plot, String part) {
        plot.add(part, Bench.set(wiring.circuit, part, "continuous-current", Math.round(11 * wiring.amperes(part)) / 10.0 + " A"));
    }

    private static void overloaded(Wiring wiring, Plot plot) {
        for (String part : wiring.all("switch")) {
            if (wiring.amperes(part) > 0.5) {
                plot.add(part, Bench.set(wiring.circuit, part, "continuous-current", Math.round(8 * wiring.amperes(part)) / 10.0 + " A"));
            }
        }
    }

    /** 200 K/W for the bare part and 40 mΩ: more than 100 K above the air at the current of the circuit. */
    private static void hot(Wiring wiring, Plot plot) {
        for (String part : wiring.all("switch")) {
            if (Bench.text(wiring.circuit, part, "switching").equals("solid-state")) {
                Circuit bare = Bench.set(wiring.circuit, part, "junction-to-air", "200 K/W");
                plot.add(part, Bench.set(bare, part, "on-resistance", "40 mΩ"));
            }
        }
    }

    /** 0.35 mm² has 43 % of the copper of 18 AWG, for which Table 5 has 10 A with 60 °C insulation. */
    private static void triggerThin(Wiring wiring, Plot plot) {
        for (String part : triggered(wiring)) {
            Circuit thin = Bench.set(wiring.circuit, part, "trigger-size", "0.35 mm²");
            plot.add(part, Bench.set(thin, part, "fuse-rating", "10 A"));
        }
    }

    private static void triggerFuseLarge(Wiring wiring, Plot plot) {
        for (String part : triggered(wiring)) {
            for (String size : List.of("0.5 mm²", "0.75 mm²", "1 mm²", "1.5 mm²")) {
                Circuit sized = Bench.set(wiring.circuit, part, "trigger-size", size);
                plot.add(part, Bench.set(sized, part, "fuse-rating", "30 A"));
            }
        }
    }

    /** Taken from the first part behind the main device, where no small fuse-link guards it: 0.5 mm² of cord carries 3 A (BS 7671 Table 4F3A). */
    private static void triggerUnfused(Wiring wiring, Plot plot) {
        for (String part : triggered(wiring)) {
            for (String device : wiring.all("protection")) {
                if (wiring.deviceBefore(device).isEmpty() && wiring.rating(device) > 3 && !wiring.behind(part).contains(device)) {
                    Circuit moved = Bench.triggered(wiring.circuit, part, device);
                    Circuit thin = Bench.set(moved, part, "trigger-size", "0.5 mm²");
                    plot.add(part, Bench.set(thin, part, "fuse-rating", ""));
                }
            }
        }
    }

    private static void triggerMissing(Wiring wiring, Plot plot) {
        for (String part : triggered(wiring)) {
            plot.add(part, Bench.triggered(wiring.circuit, part, ""));
        }
    }

    private static void triggerBehind(Wiring wiring, Plot plot) {
        for (String part : triggered(wiring)) {
            for (String behind : wiring.behind(part)) {
                if (!wiring.is(behind, "load")) {
                    plot.add(part, Bench.triggered(wiring.circuit, part, behind));
                }
            }
        }
    }
}
