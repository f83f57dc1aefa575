package loomwright.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Conductor;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.conductor.AmpacityRuleSet;
import loomwright.conductor.CarryingCapacity;
import loomwright.conductor.ConductorKind;
import loomwright.conductor.Insulation;
import loomwright.conductor.RunSize;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** The conductor of a run: the thinnest that is sold, is allowed, carries its device, and loses little enough. */
final class RunChoice {
    /** Thicker ones are not for a first job; of metric ones above 16 mm² no resistance is in print here. */
    private static final double MOST_MM2 = 16;
    private static final double MOST_AWG_MM2 = 21.2;

    private final String name;
    private final Quantity route;
    private final Situated place;
    private final int together;
    private final ConductorKind kind;
    private final List<RunSize> sizes;
    private Insulation insulation;
    private int at;

    RunChoice(String name, Quantity route, Situated place, int together, boolean sheathed, boolean byGauge) {
        this(name, route, place, together, kind(byGauge), sold(kind(byGauge), least(byGauge, sheathed), Plain.quantity(place.warmth())));
    }

    private RunChoice(String name, Quantity route, Situated place, int together, ConductorKind kind, List<RunSize> sizes) {
        this.name = name;
        this.route = route;
        this.place = place;
        this.together = together;
        this.kind = kind;
        this.insulation = place.insulation();
        this.sizes = sizes;
    }

    /** A run that is there already, of one size only; null if no table has that size. */
    static RunChoice existing(String name, Quantity route, Quantity size) {
        ConductorKind kind = kind(size.unit() == Units.AWG);
        for (RunSize each : RunSize.series(kind, Plain.quantity(Situated.INSIDE.warmth()))) {
            if (Math.abs(each.size().base() - size.base()) <= 1e-6 * size.base()) {
                return new RunChoice(name, route, Situated.INSIDE, 2, kind, List.of(each));
            }
        }
        return null;
    }

    private static ConductorKind kind(boolean byGauge) {
        return byGauge ? ConductorKind.NEC_STRANDED : ConductorKind.ISO_6722_1;
    }

    /** The thinnest that a rule set allows: by ISO 10133 in mm², by 33 CFR in AWG. */
    static Quantity least(boolean byGauge, boolean sheathed) {
        String key = byGauge ? (sheathed ? "33-cfr-sheath" : "33-cfr-separate") : sheathed ? "iso-10133-multicore" : "iso-10133-single";
        return PublishedTables.smallestConductor().row(key).quantity(byGauge ? "size-awg" : "size");
    }

    /** Thinner than Table 5 of 33 CFR begins none is taken. */
    private static List<RunSize> sold(ConductorKind kind, Quantity least, Quantity warmth) {
        double most = kind == ConductorKind.NEC_STRANDED ? MOST_AWG_MM2 : MOST_MM2;
        List<RunSize> sizes = new ArrayList<>();
        for (RunSize each : RunSize.series(kind, warmth)) {
            boolean thick = each.size().base() > most * 1e-6 * (1 + 1e-6);
            boolean listed = AmpacityRuleSet.BOAT.row(each.size()) != null;
            if (listed && !thick && each.size().base() >= least.base() * (1 - 1e-6) && hasTerminal(each.size())) {
                sizes.add(each);
            }
        }
        return sizes;
    }

    /** Between 2.5 mm² and 4 mm² no colour of terminal is made: 3 mm² is left out. */
    private static boolean hasTerminal(Quantity size) {
        double mm2 = size.base() * 1e6;
        double thickest = 0;
        for (Row row : PublishedTables.terminalColours().rows()) {
            boolean gauge = size.unit() == row.quantity("thinnest").unit();
            double from = gauge ? row.quantity("thinnest").base() * 1e6 : row.quantity("size-from").base() * 1e6;
            double to = gauge ? row.quantity("thickest").base() * 1e6 : row.quantity("size-to").base() * 1e6;
            thickest = Math.max(thickest, to);
            if (mm2 >= from * (1 - 1e-6) && mm2 <= to * (1 + 1e-6)) {
                return true;
            }
        }
        return mm2 > thickest;
    }

    String name() {
        return name;
    }

    Quantity route() {
        return route;
    }

    Situated place() {
        return place;
    }

    Insulation insulation() {
        return insulation;
    }

    ConductorKind kind() {
        return kind;
    }

    Quantity size() {
        return sizes.get(at).size();
    }

    Quantity thickest() {
        return sizes.get(sizes.size() - 1).size();
    }

    /** Goes up to the thinnest that carries a device, with better insulation if no size does with what is there; false if none does at all. */
    boolean carry(Quantity rating) {
        for (Insulation each : sizes.size() == 1 ? List.of(insulation) : List.of(insulation, Insulation.T105)) {
            for (int i = at; i < sizes.size(); i++) {
                CarryingCapacity capacity = conductor(i, each).capacity();
                if (capacity.isRated() && capacity.value().base() >= rating.base() * (1 - 1e-9)) {
                    at = i;
                    insulation = each;
                    return true;
                }
            }
        }
        return false;
    }

    /** Goes up to the thinnest that loses no more than so many volts; to the thickest if none does. */
    void lose(double amperes, double volts) {
        while (at < sizes.size() - 1 && amperes * ohms() > volts * (1 + 1e-9)) {
            at++;
        }
    }

    /** Its resistance out and back, as warm as it works, in Ω. */
    double ohms() {
        return 2 * route.base() * sizes.get(at).perMetre().base();
    }

    /** Takes the next size; false if it is the last. */
    boolean thicken() {
        if (at == sizes.size() - 1) {
            return false;
        }
        at++;
        return true;
    }

    /** At least as thick as another, with the same insulation. */
    void follow(RunChoice other) {
        insulation = other.insulation;
        while (at < sizes.size() - 1 && sizes.get(at).size().base() < other.size().base() * (1 - 1e-9)) {
            at++;
        }
    }

    CarryingCapacity capacity() {
        return conductor(at, insulation).capacity();
    }

    private Conductor conductor(int size, Insulation taken) {
        return Conductor.of(part("run", "", size, taken));
    }

    /** It as a part of a circuit. */
    Part part(String id, String fedBy) {
        return part(id, fedBy, at, insulation);
    }

    private Part part(String id, String fedBy, int size, Insulation taken) {
        return Part.read(id, PartKind.CONDUCTOR, name, fedBy, "", "", texts(size, taken)).partOrRefuse();
    }

    /** What is entered for it, by the keys of a conductor run. */
    Map<String, String> texts() {
        return texts(at, insulation);
    }

    private Map<String, String> texts(int size, Insulation taken) {
        Map<String, String> texts = new HashMap<>();
        texts.put("conductor", kind.key());
        texts.put("size", Plain.text(sizes.get(size).size()));
        texts.put("route-length", Plain.text(route));
        texts.put("temperature", place.warmth());
        texts.put("insulation-temperature", taken.key());
        texts.put("engine-space", place.isEngineSpace() ? "yes" : "no");
        texts.put("ambient", place.warmth());
        texts.put("conductors-together", Integer.toString(together));
        return texts;
    }
}
