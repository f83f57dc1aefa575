package loomwright.graph;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Dash;
import loomwright.picture.Graph;
import loomwright.picture.Picture;
import loomwright.picture.Point;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.table.Table;

/** The window in which a fuse-link or breaker opens, against the current, both on logarithmic axes. */
final class OpeningWindow implements CalculatorGraph {
    /** Nearer to a gate than anyone can draw. */
    private static final double HAIR = 1e-6;

    @Override
    public String calculator() {
        return "time-current";
    }

    @Override
    public Picture draw(Rerun here) {
        double rating = here.entry("rating").in(Units.AMPERE).value();
        Quantity current = here.entry("current").in(Units.AMPERE);
        double least = Math.min(rating * 0.8, current.value() / 1.2);
        double most = Math.max(rating * 10, current.value() * 1.2);
        List<Double> currents = currents(rating, least, most);
        List<Point> earliest = here.points("current", currents, Units.AMPERE, "earliest", Units.SECOND);
        List<Point> latest = here.points("current", currents, Units.AMPERE, "latest", Units.SECOND);
        if (earliest.isEmpty() && latest.isEmpty()) {
            return null;
        }
        Graph graph = new Graph(
                Axis.logarithmic("Current (A)", least, most), Axis.logarithmic("Time until it opens (s)", 0.01, longest(earliest, latest)));
        graph.upright(current.text(), current.value());
        if (!earliest.isEmpty()) {
            graph.line("not before", Style.INK, Dash.SHORT, earliest);
        }
        if (!latest.isEmpty()) {
            graph.line("open by", Style.ACCENT, Dash.NONE, latest);
        }
        if (here.entry("time-limit") != null) {
            graph.limit("must be open", here.entry("time-limit").in(Units.SECOND).value());
        }
        return graph.picture(
                "When it opens, against the current",
                "Two stepped lines fall to the right: before the dashed one it does not open, by the bold one it has opened. "
                        + "A dotted upright line marks " + current.text() + ".");
    }

    /** The ends, and a hair to each side of every gate, where the lines step. */
    private static List<Double> currents(double rating, double least, double most) {
        List<Double> currents = new ArrayList<>();
        currents.add(least);
        for (double share : shares()) {
            for (double beside : new double[] {1 - HAIR, 1, 1 + HAIR}) {
                double current = share * rating * beside;
                if (current > currents.get(currents.size() - 1) && current < most) {
                    currents.add(current);
                }
            }
        }
        currents.add(most);
        return currents;
    }

    /** Every share of the rating that a gate is printed for, rising. */
    private static List<Double> shares() {
        List<Double> shares = new ArrayList<>();
        for (Table table : List.of(PublishedTables.fuseGates(), PublishedTables.marineBreakerTrip())) {
            for (Row row : table.rows()) {
                if (row.has("current-share")) {
                    add(shares, row.quantity("current-share").base());
                }
            }
        }
        return shares;
    }

    private static void add(List<Double> rising, double value) {
        int at = 0;
        while (at < rising.size() && rising.get(at) < value) {
            at++;
        }
        if (at == rising.size() || rising.get(at) > value) {
            rising.add(at, value);
        }
    }

    private static double longest(List<Point> one, List<Point> other) {
        double longest = 100;
        for (List<Point> points : List.of(one, other)) {
            for (Point point : points) {
                longest = Math.max(longest, point.y() * 2);
            }
        }
        return longest;
    }
}
