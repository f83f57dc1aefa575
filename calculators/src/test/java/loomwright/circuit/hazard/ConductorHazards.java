package loomwright.circuit.hazard;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;

/** Mistakes in a conductor run and in what lies around it. Each is planted only where the device before the run then lets too much pass. */
final class ConductorHazards {
    static final List<Hazard> ALL = List.of(
            Hazard.stop("thinner-conductor", "A conductor thinner than its fuse-link or breaker asks for", ConductorHazards::thinner),
            Hazard.stop("too-thin-for-any-table", "A conductor of 0.5 mm², thinner than the table of currents begins", ConductorHazards::tooThin),
            Hazard.stop("warm-place", "A run laid where it is 55 °C, behind a fuse-link chosen for 30 °C", ConductorHazards::warm),
            Hazard.stop("hotter-than-insulation", "A run laid where it is hotter than its insulation stands", ConductorHazards::tooHot),
            Hazard.stop("roof-in-the-sun", "A run of 105 °C cable where it is 80 °C, behind a fuse-link chosen for 30 °C", ConductorHazards::roof),
            Hazard.stop("sheet-misread", "An ampacity typed ten times too high from a data sheet", ConductorHazards::misread, "conductor.sheet-ampacity"),
            Hazard.stop("engine-space", "A run of ordinary cable through an engine space", ConductorHazards::engineSpace),
            Hazard.caution("bundle-of-24", "A run bundled with others, 24 loaded conductors in all", ConductorHazards::bundle),
            Hazard.stop("lower-insulation", "Cable for 60 °C where cable for 90 °C or 105 °C was planned", ConductorHazards::lowerInsulation),
            Hazard.caution("wrong-rule-set", "Conductors in a bundle, held against a table for one conductor in free air", ConductorHazards::wrongRules),
            Hazard.caution("longer-run", "A run so long that the load loses too much voltage", ConductorHazards::longer));

    private ConductorHazards() {}

    private static void thinner(Wiring wiring, Plot plot) {
        for (String run : wiring.all("conductor")) {
            String found = "";
            boolean metric = wiring.metric(run);
            for (String size : metric ? Copper.METRIC : Copper.GAUGES) {
                double area = metric ? Double.parseDouble(size) : Copper.area(size);
                String insulation = Bench.text(wiring.circuit, run, "insulation-temperature");
                boolean tooThin = Copper.ampacity(area, metric, insulation) < wiring.ratingBefore(run);
                found = tooThin && area < wiring.squareMillimetres(run) ? size + (metric ? " mm²" : " AWG") : found;
            }
            if (!found.isEmpty() && !wiring.deviceBefore(run).isEmpty()) {
                plot.add(run, Bench.set(wiring.circuit, run, "size", found));
            }
        }
    }

    /** The thinnest row, 18 AWG of 0.823 mm², reduced by the area: 0.5 mm² carries less than that, because thin wires are held to the same warmth. */
    private static void tooThin(Wiring wiring, Plot plot) {
        for (String run : wiring.all("conductor")) {
            double most = Copper.ampacity(0.83, false, Bench.text(wiring.circuit, run, "insulation-temperature")) * 0.5 / 0.823;
            if (!wiring.deviceBefore(run).isEmpty() && wiring.ratingBefore(run) > most) {
                Circuit thin = Bench.set(wiring.circuit, run, "conductor", "iso-6722-1");
                plot.add(run, Bench.set(thin, run, "size", "0.5 mm²"));
            }
        }
    }

    /** At 55 °C 60 °C insulation leaves √(5/30) = 0.41 of the current at 30 °C, as NEC prints it; a tenth is added before it counts. */
    private static void warm(Wiring wiring, Plot plot) {
        plainCable(wiring, plot, 0.45, "ambient", "55 °C");
    }

    /** At 80 °C insulation for 105 °C leaves √(25/75) = 0.58 of the current at 30 °C; a little is added before it counts. */
    private static void roof(Wiring wiring, Plot plot) {
        for (String run : wiring.all("conductor")) {
            if (!wiring.deviceBefore(run).isEmpty() && wiring.ratingBefore(run) > 0.60 * wiring.ampacity(run, "t105")) {
                Circuit marked = Bench.set(wiring.circuit, run, "insulation-temperature", "t105");
                plot.add(run, Bench.set(marked, run, "ambient", "80 °C"));
            }
        }
    }

    private static void misread(Wiring wiring, Plot plot) {
        for (String run : wiring.all("conductor")) {
            String tenfold = Math.round(10 * wiring.ampacity(run, "t105")) + " A";
            Circuit typed = Bench.tried(wiring.circuit, run, "sheet-ampacity", tenfold);
            if (typed != null) {
                plot.add(run, typed);
            }
        }
    }

    private static void engineSpace(Wiring wiring, Plot plot) {
        plainCable(wiring, plot, 0.58, "engine-space", "yes");
    }

    private static void bundle(Wiring wiring, Plot plot) {
        plainCable(wiring, plot, 0.50, "conductors-together", "24");
    }

    private static void lowerInsulation(Wiring wiring, Plot plot) {
        plainCable(wiring, plot, 1, "insulation-temperature", "t60");
    }

    /** Cable of 60 °C insulation, and one thing more, at every run whose device is above that share of the 60 °C column. */
    private static void plainCable(Wiring wiring, Plot plot, double share, String field, String text) {
        for (String run : wiring.all("conductor")) {
            boolean above = wiring.ratingBefore(run) > share * wiring.ampacity(run, "t60") * 1.001;
            if (above && !wiring.deviceBefore(run).isEmpty()) {
                Circuit plain = Bench.set(wiring.circuit, run, "insulation-temperature", "t60");
                plot.add(run, Bench.set(plain, run, field, text));
            }
        }
    }

    private static void tooHot(Wiring wiring, Plot plot) {
        for (String run : wiring.all("conductor")) {
            int stands = Integer.parseInt(Bench.text(wiring.circuit, run, "insulation-temperature").substring(1));
            plot.add(run, Bench.set(wiring.circuit, run, "ambient", stands + 5 + " °C"));
        }
    }

    /** Four to six conductors together leave 0.60 (33 CFR 183.425 Table 5 note 2); the free-air table knows no bundle. */
    private static void wrongRules(Wiring wiring, Plot plot) {
        for (String run : wiring.all("conductor")) {
            if (!wiring.deviceBefore(run).isEmpty() && wiring.ratingBefore(run) > 0.60 * wiring.ampacity(run, "t60")) {
                Circuit plain = Bench.set(wiring.circuit, run, "insulation-temperature", "t60");
                Circuit bundled = Bench.set(plain, run, "conductors-together", "6");
                plot.add(run, Bench.set(bundled, run, "rule-set", "nec-free-air"));
            }
        }
    }

    /** As long as it takes to lose half as much again as the load behind may lose, in this run alone; a load that loses much draws no less. */
    private static void longer(Wiring wiring, Plot plot) {
        for (String run : wiring.all("conductor")) {
            for (String load : wiring.loadsBehind(run)) {
                double allowed = Bench.text(wiring.circuit, load, "allowance").equals("abyc-other") ? 1.2 : 0.36;
                double perMetre = Copper.milliohms(wiring.squareMillimetres(run), 1, 20) / 1000;
                double metres = Math.ceil(1.5 * allowed / (wiring.amperes(load) * perMetre));
                if (metres <= 60 && metres > wiring.number(run, "route-length")) {
                    List<String> blamed = new ArrayList<>(wiring.loadsBehind(run));
                    blamed.add(run);
                    plot.add(run, Bench.set(wiring.circuit, run, "route-length", metres + " m"), blamed);
                    break;
                }
            }
        }
    }
}
