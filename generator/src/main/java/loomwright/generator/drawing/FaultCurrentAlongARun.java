package loomwright.generator.drawing;

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

/** Prospective fault current against the distance from a 100 Ah lead-acid battery, and what a blade fuse-link can break. */
final class FaultCurrentAlongARun implements Drawing {
    private static final double LONGEST_METRES = 5;

    @Override
    public String name() {
        return "fault-current-along-a-run";
    }

    @Override
    public List<String> takes() {
        return List.of("size", "voltage", "route-length");
    }

    @Override
    public Picture draw(Given given) {
        given.number("size", Units.SQUARE_MILLIMETRE);
        given.number("voltage", Units.VOLT);
        double marked = given.number("route-length", Units.METRE);
        if (marked > LONGEST_METRES) {
            throw given.fault("route-length", "is longer than the graph, 5 m");
        }
        Quantity blade = PublishedTables.fuseBreakingCapacity().row("blade").quantity("breaking-capacity").in(Units.AMPERE);
        Quantity nearest = fault(given, 0, "highest-current");
        Axis across = Axis.linear("Route from the battery (m)", 0, LONGEST_METRES).parts(5);
        Graph graph = new Graph(across, Axis.logarithmic("Fault current (A)", 100, 10_000));
        graph.limit("blade " + blade.text(3).replace(' ', '\u00a0'), blade.value());
        graph.upright(given.label("route-length"), marked);
        graph.line("highest", Style.ACCENT, Dash.NONE, points(given, across, marked, "highest-current"));
        graph.line("lowest", Style.INK, Dash.SHORT, points(given, across, marked, "lowest-current"));
        return graph.picture(
                "Fault current along a run",
                "A graph of fault current against the route from a 100 Ah lead-acid battery through " + given.text("size")
                        + ". The scale of current goes up by tens. The highest current begins at " + nearest.text(3) + " and falls to "
                        + fault(given, marked, "highest-current").text(3) + " at " + given.text("route-length")
                        + "; the lowest lies below it. A level line marks what a blade fuse-link can break, " + blade.text(3) + ".");
    }

    private static List<Point> points(Given given, Axis across, double marked, String result) {
        List<Point> points = new ArrayList<>();
        for (double metres : across.samples(5, marked)) {
            points.add(new Point(metres, fault(given, metres, result).value()));
        }
        return points;
    }

    private static Quantity fault(Given given, double metres, String result) {
        Computed loop = Computed.by("fault-current").with("battery", "lead-acid-100-ah")
                .with("highest-voltage", given.text("voltage"))
                .with("lowest-voltage", given.text("voltage"))
                .with("temperature", "20 °C");
        if (metres > 0) {
            loop.with("branch-size", given.text("size")).with("branch-route-length", metres, Units.METRE);
        }
        return loop.result(result, Units.AMPERE);
    }
}
