package loomwright.conductor;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Candidate;
import loomwright.worked.WorkingBuilder;

/** Finds the neighbours of an area in the metric series and among the gauges. */
final class GaugeSeries {
    static final String SAME = "the same copper";

    private static final double HAIR = 1e-9;
    private static final int THICKEST = -3;
    private static final int THINNEST = 40;

    private GaugeSeries() {}

    static MetricSize metric(WorkingBuilder working, Quantity area) {
        Row below = null;
        Row enough = null;
        for (Row row : PublishedTables.iec60228().rows()) {
            if (holds(row.quantity("size"), area)) {
                enough = enough == null ? row : enough;
            } else {
                below = row;
            }
        }
        Row nearest = enough == null || below != null && isNearer(below.quantity("size"), enough.quantity("size"), area) ? below : enough;
        Quantity chosen = choose(
                working, "Take the nearest metric size", size(below), size(enough), nearest.quantity("size"), area,
                "The names of the two series do not meet; this is the closest.", nearest.source());
        Quantity difference = working.compute(
                "See how its copper differs", GaugeFormulas.METRIC_DIFFERENCE,
                Values.of(GaugeSymbols.METRIC_AREA, chosen).with(Symbols.AREA, area), Units.PERCENT,
                "Nearest is not enough: a minus sign means less copper.");
        working.result("nearest-metric", chosen);
        if (enough != null) {
            working.result("next-larger-metric", nearest == enough ? chosen : choose(
                    working, "Take the first metric size with at least as much copper", size(below), size(enough), size(enough), area,
                    "In place of a given size this one does not weaken the circuit.", enough.source()));
        }
        working.result("metric-difference", difference);
        return new MetricSize(below, enough, nearest, difference);
    }

    /** The neighbours among the gauges; {@code given} is the gauge itself if the size was named by one, or null. */
    static void awg(WorkingBuilder working, Quantity given, Quantity area) {
        if (given != null) {
            working.result("nearest-awg", given);
            working.result("next-larger-awg", given);
            return;
        }
        Quantity below = null;
        Quantity enough = null;
        for (int gauge = THICKEST; gauge <= THINNEST; gauge++) {
            Quantity size = Quantity.of(gauge, Units.AWG);
            if (holds(size, area)) {
                enough = size;
            } else {
                below = below == null ? size : below;
            }
        }
        Quantity nearest = enough == null || below != null && isNearer(below, enough, area) ? below : enough;
        working.result("nearest-awg", choose(
                working, "Take the nearest AWG", below, enough, nearest, area, "Gauge numbers run backwards: a higher one is thinner.",
                GaugeFormulas.gaugeRule()));
        if (enough != null) {
            working.result("next-larger-awg", nearest == enough ? nearest : choose(
                    working, "Take the first AWG with at least as much copper", below, enough, enough, area,
                    "In place of a given size this one does not weaken the circuit.", GaugeFormulas.gaugeRule()));
        }
    }

    private static Quantity choose(
            WorkingBuilder working, String words, Quantity below, Quantity enough, Quantity taken, Quantity area, String why,
            Source source) {
        List<Candidate> candidates = new ArrayList<>();
        addCandidate(candidates, below, taken, area);
        addCandidate(candidates, enough, taken, area);
        return working.choose(words, candidates, taken, why, source);
    }

    private static void addCandidate(List<Candidate> candidates, Quantity size, Quantity taken, Quantity area) {
        if (size != null) {
            candidates.add(new Candidate(size.text(), size.equals(taken), compared(size, area)));
        }
    }

    /** The copper of one size against another, in words: {@code 24.4 % less copper}. */
    static String compared(Quantity size, Quantity area) {
        double share = size.base() / area.base() - 1;
        if (Math.abs(share) < 0.00005) {
            return SAME;
        }
        return Quantity.ofBase(Math.abs(share), Units.PERCENT).text(3) + (share < 0 ? " less copper" : " more copper");
    }

    private static Quantity size(Row row) {
        return row == null ? null : row.quantity("size");
    }

    private static boolean holds(Quantity size, Quantity area) {
        return size.base() >= area.base() * (1 - HAIR);
    }

    private static boolean isNearer(Quantity one, Quantity other, Quantity area) {
        return Math.abs(one.base() - area.base()) < Math.abs(other.base() - area.base());
    }
}
