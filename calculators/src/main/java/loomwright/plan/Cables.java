package loomwright.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Conductor;
import loomwright.circuit.Part;
import loomwright.conductor.AmpacityRuleSet;
import loomwright.conductor.CarryingCapacity;
import loomwright.conductor.ConductorKind;
import loomwright.conductor.RunSize;
import loomwright.conductor.Surroundings;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** The cables that a job may be wired with, and what each carries. What was looked up once is kept: a step that is taken again asks for the same. */
final class Cables {
    /** Thicker ones are not for a first job; of metric ones above 16 mm² no resistance is in print here. */
    private static final double MOST_MM2 = 16;
    private static final double MOST_AWG_MM2 = 21.2;

    private final boolean byGauge;
    private final Map<String, List<RunSize>> sold = new HashMap<>();
    private final Map<String, CarryingCapacity> capacities = new HashMap<>();
    private final Map<String, Part> parts = new HashMap<>();

    Cables(boolean byGauge) {
        this.byGauge = byGauge;
    }

    boolean byGauge() {
        return byGauge;
    }

    ConductorKind kind() {
        return kind(byGauge);
    }

    static ConductorKind kind(boolean byGauge) {
        return byGauge ? ConductorKind.NEC_STRANDED : ConductorKind.ISO_6722_1;
    }

    /** The thinnest that a rule set allows: by ISO 10133 in mm², by 33 CFR in AWG. */
    Quantity least(boolean sheathed) {
        String key = byGauge ? (sheathed ? "33-cfr-sheath" : "33-cfr-separate") : sheathed ? "iso-10133-multicore" : "iso-10133-single";
        return PublishedTables.smallestConductor().row(key).quantity(byGauge ? "size-awg" : "size");
    }

    /** What is sold and allowed, the thinnest first. */
    List<RunSize> sold(boolean sheathed, String warmth) {
        String asked = sheathed + warmth;
        List<RunSize> known = sold.get(asked);
        if (known == null) {
            known = list(least(sheathed), Plain.quantity(warmth));
            sold.put(asked, known);
        }
        return known;
    }

    /** Thinner than Table 5 of 33 CFR begins none is taken. */
    private List<RunSize> list(Quantity least, Quantity warmth) {
        double most = byGauge ? MOST_AWG_MM2 : MOST_MM2;
        List<RunSize> sizes = new ArrayList<>();
        for (RunSize each : RunSize.series(kind(), warmth)) {
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
        double thickest = 0;
        for (Row row : PublishedTables.terminalColours().rows()) {
            thickest = Math.max(thickest, row.quantity(size.unit() == Units.AWG ? "thickest" : "size-to").base());
        }
        return fitsTabs(size) || size.base() > thickest;
    }

    /** Whether a terminal with a coloured sleeve is made for it, as the tabs of a switch take it. */
    static boolean fitsTabs(Quantity size) {
        return sleeve(size) != null;
    }

    /** The row of its coloured sleeve; null if none is made for it. */
    static Row sleeve(Quantity size) {
        boolean gauge = size.unit() == Units.AWG;
        for (Row row : PublishedTables.terminalColours().rows()) {
            double from = row.quantity(gauge ? "thinnest" : "size-from").base();
            double to = row.quantity(gauge ? "thickest" : "size-to").base();
            if (size.base() >= from * (1 - 1e-6) && size.base() <= to * (1 + 1e-6)) {
                return row;
            }
        }
        return null;
    }

    /** A part that was understood before under that key; null if none was. */
    Part known(String key) {
        return parts.get(key);
    }

    Part keep(String key, Part part) {
        parts.put(key, part);
        return part;
    }

    /** What a run carries. Its length has no part in it. */
    CarryingCapacity capacity(Part run) {
        String asked = run.text("conductor") + " " + run.text("size");
        for (String each : Surroundings.KEYS) {
            asked += " " + run.text(each);
        }
        CarryingCapacity known = capacities.get(asked);
        if (known == null) {
            known = Conductor.of(run).capacity();
            capacities.put(asked, known);
        }
        return known;
    }
}
