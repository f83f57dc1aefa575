package loomwright.conductor;

import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Where taking one size for another would lose copper. */
final class GaugeFindings {
    private static final String CHECK_AGAIN = "or check drop, ampacity and fuse-link again with its own figures.";

    private GaugeFindings() {}

    static void add(WorkingBuilder working, Quantity size, Quantity area, MetricSize metric, SaeSize sae) {
        addMetric(working, named(size, area, sae), area, metric);
        if (size.unit() != Units.AWG) {
            addAwg(working, named(size, area, sae), area);
        }
        if (sae.row() != null) {
            addSae(working, sae);
            addSubstitute(working, size, sae);
        }
    }

    private static void addMetric(WorkingBuilder working, String named, Quantity area, MetricSize metric) {
        Quantity nearest = metric.nearestSize();
        String remedy = metric.enough() == null
                ? "The metric series here ends at " + nearest.text() + ": ask the cable maker for the next size, "
                : "Take " + metric.enough().name() + ", ";
        if (!GaugeSeries.compared(nearest, area).equals(GaugeSeries.SAME)) {
            working.finding(enough("The copper of the nearest metric size", nearest, area, named, metric.nearest().source(), remedy));
        }
    }

    private static void addAwg(WorkingBuilder working, String named, Quantity area) {
        Quantity nearest = working.stated("nearest-awg");
        Quantity larger = working.stated("next-larger-awg");
        String remedy = larger == null ? "AWG ends at 4/0: take a metric size, " : "Take " + larger.text() + ", ";
        if (!Comparison.atLeast(nearest, area)) {
            working.finding(enough(
                    "The copper of the nearest AWG, " + nearest.text(), nearest.in(Units.SQUARE_MILLIMETRE), area, named,
                    GaugeFormulas.gaugeRule(), remedy));
        }
    }

    /** Whether a size has at least the copper of the one it stands for. */
    private static Finding enough(String subject, Quantity nearest, Quantity area, String named, Source source, String remedy) {
        return Comparison.of(subject, nearest)
                .atLeast(area, "that of " + named + " (" + GaugeSeries.compared(nearest, area) + ")", source)
                .exact()
                .otherwise(Verdict.CAUTION, remedy + CHECK_AGAIN)
                .finding();
    }

    private static void addSae(WorkingBuilder working, SaeSize sae) {
        String lacks = sae.name() + " has " + sae.shortfall().text(3) + " less copper than " + sae.row().name() + ".";
        working.finding(new Finding(
                Verdict.CAUTION, lacks, sae.saeArea(), sae.awgArea(), sae.row().source(),
                sae.named()
                        ? "Leave AWG tables alone: work with its own area."
                        : "Take a cable that carries the number without the letters AWG as SAE gauge, until the maker's data says otherwise."));
    }

    /** A list made to replace metric cable by AWG, read the other way round. */
    private static void addSubstitute(WorkingBuilder working, Quantity size, SaeSize sae) {
        boolean printed = !sae.named() && sae.row().has("engine-manual-substitute");
        Quantity substitute = printed ? sae.row().quantity("engine-manual-substitute") : null;
        if (printed && substitute.base() < sae.awgArea().base()) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "A printed list puts " + substitute.text() + " in place of " + size.text() + ": "
                            + GaugeSeries.compared(substitute, sae.awgArea()) + ".",
                    substitute, sae.awgArea(), sae.row().source(), "Take a size with at least as much copper, " + CHECK_AGAIN));
        }
    }

    /** The size as it was entered, with its area behind a gauge or a diameter. */
    private static String named(Quantity size, Quantity area, SaeSize sae) {
        String name = sae.named() ? sae.name() : size.text();
        boolean isArea = size.dimension().equals(Dimension.AREA) && size.unit() != Units.AWG;
        return isArea ? name : name + " (" + area.text(3) + ")";
    }

    /** The resistance of this size, if there is a way to it. */
    static void addNext(WorkingBuilder working, Quantity size, Quantity area, SaeSize sae) {
        boolean gauge = size.unit() == Units.AWG;
        String kind = "copper-by-area";
        if (sae.named()) {
            kind = "sae-by-area";
        } else if (gauge && PublishedTables.awgCopper20c().find("size", size) != null) {
            kind = "solid-copper";
        }
        String carried = kind.equals("copper-by-area") ? area.text() : size.text();
        if (area.value() >= 0.05) {
            working.next(
                    "conductor-resistance", "What resistance does a length of it have?", "conductor", kind, "size", carried);
        }
    }
}
