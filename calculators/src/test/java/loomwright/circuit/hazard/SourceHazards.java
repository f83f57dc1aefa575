package loomwright.circuit.hazard;

import java.util.List;
import java.util.Locale;
import loomwright.circuit.Circuit;

/** Mistakes in what charges the battery. */
final class SourceHazards {
    static final List<Hazard> ALL = List.of(
            Hazard.stop("charging-voltage", "A charging voltage above what the battery stands", SourceHazards::chargingVoltage),
            Hazard.stop("charging-current", "A charging current above what the battery stands", SourceHazards::chargingCurrent,
                    "supply.charge-current-most", "source.charge-current"),
            Hazard.stop("source-voltage", "A charger set to more voltage than the battery stands", SourceHazards::sourceVoltage,
                    "source.charge-voltage"),
            Hazard.stop("source-without-device", "A solar controller joined to the battery without a device", SourceHazards::unprotected,
                    "source.charge-current"),
            Hazard.stop("source-behind-small-device", "A solar controller behind a fuse-link rated below its charging current",
                    SourceHazards::smallDevice, "source.charge-current"),
            Hazard.stop("run-between-two-sources", "A run between two batteries, with a fuse-link at one end only", SourceHazards::oneEnd,
                    "source.source-kind"),
            Hazard.stop("large-device-at-the-other-end", "A run between two batteries, with a fuse-link too large for it at the other end",
                    SourceHazards::largeOtherEnd, "source.device-at-source"));

    private SourceHazards() {}

    /** Four cells of LiFePO4 end at 14.6 V, and no table charges a lead-acid battery of six cells above 15 V; twice that for 24 V. */
    private static void chargingVoltage(Wiring wiring, Plot plot) {
        plot.add(wiring.battery, Bench.set(wiring.circuit, wiring.battery, "highest-voltage", tooHigh(wiring)));
    }

    private static String tooHigh(Wiring wiring) {
        boolean high = wiring.number(wiring.battery, "battery-voltage") > 20;
        boolean lithium = Bench.text(wiring.circuit, wiring.battery, "chemistry").equals("lifepo4");
        return String.format(Locale.ROOT, "%.1f V", (lithium ? 15.4 : 15.9) * (high ? 2 : 1));
    }

    /** A controller of 20 A behind a run and, if wanted, a device of that rating, at the battery. */
    private static Circuit withSource(Wiring wiring, String rating, String amperes) {
        Circuit circuit = wiring.circuit;
        String end = wiring.battery;
        if (!rating.isEmpty()) {
            Circuit protectedRun = Bench.added(circuit, "protection", end);
            end = Bench.fresh(circuit, protectedRun);
            circuit = Bench.set(protectedRun, end, "device", "class-t");
            circuit = Bench.set(circuit, end, "breaking-capacity", "20 kA");
            circuit = Bench.set(circuit, end, "rated-voltage", "125 V");
            circuit = Bench.set(circuit, end, "rating", rating);
        }
        Circuit run = Bench.added(circuit, "conductor", end);
        end = Bench.fresh(circuit, run);
        circuit = Bench.set(Bench.set(run, end, "size", "6 mm²"), end, "route-length", "1.5 m");
        Circuit source = Bench.added(circuit, "source", end);
        return Bench.set(source, Bench.fresh(circuit, source), "charge-current", amperes);
    }

    private static List<String> added(Wiring wiring, Circuit circuit) {
        return Bench.ids(circuit).stream().filter(id -> wiring.circuit.part(id) == null || id.equals(wiring.battery)).toList();
    }

    private static void plantSource(Wiring wiring, Plot plot, Circuit circuit) {
        plot.add(wiring.battery, circuit, added(wiring, circuit));
    }

    private static void chargingCurrent(Wiring wiring, Plot plot) {
        Circuit circuit = withSource(wiring, "30 A", "20 A");
        plantSource(wiring, plot, Bench.set(circuit, wiring.battery, "charge-current-most", "15 A"));
    }

    private static void sourceVoltage(Wiring wiring, Plot plot) {
        Circuit circuit = withSource(wiring, "30 A", "20 A");
        String source = added(wiring, circuit).get(added(wiring, circuit).size() - 1);
        plantSource(wiring, plot, Bench.set(circuit, source, "charge-voltage", tooHigh(wiring)));
    }

    private static void unprotected(Wiring wiring, Plot plot) {
        plantSource(wiring, plot, withSource(wiring, "", "20 A"));
    }

    private static void smallDevice(Wiring wiring, Plot plot) {
        plantSource(wiring, plot, withSource(wiring, "1 A", "20 A"));
    }

    /** 100 A before 6 mm², to which Table 5 gives 40 A with 60 °C insulation. */
    private static void largeOtherEnd(Wiring wiring, Plot plot) {
        Circuit circuit = withSource(wiring, "30 A", "20 A");
        String source = added(wiring, circuit).get(added(wiring, circuit).size() - 1);
        Circuit battery = Bench.set(circuit, source, "source-kind", "second-battery");
        plantSource(wiring, plot, Bench.set(battery, source, "device-at-source", "100 A"));
    }

    private static void oneEnd(Wiring wiring, Plot plot) {
        Circuit circuit = withSource(wiring, "30 A", "20 A");
        String source = added(wiring, circuit).get(added(wiring, circuit).size() - 1);
        plantSource(wiring, plot, Bench.set(circuit, source, "source-kind", "second-battery"));
    }
}
