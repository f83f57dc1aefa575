package loomwright.graph;

import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Dash;
import loomwright.picture.Graph;
import loomwright.picture.Picture;
import loomwright.picture.Point;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** Run time against the current drawn. */
final class RunTimeGraph implements CalculatorGraph {
    private static final double LEAST = 0.4;
    private static final double MOST = 2.5;

    @Override
    public String calculator() {
        return "run-time";
    }

    @Override
    public Picture draw(Rerun here) {
        Quantity current = here.entry("load-current").in(Units.AMPERE);
        double hours = here.result("run-time").in(Units.HOUR).value();
        Axis across = Axis.linear("Current drawn (A)", current.value() * LEAST, current.value() * MOST);
        List<Point> points =
                here.points("load-current", across.samples(4, current.value()), Units.AMPERE, "run-time", Units.HOUR);
        Graph graph = new Graph(across, Axis.fromZero("Run time (h)", points.get(0).y()));
        graph.upright(current.text(), current.value());
        graph.line("", Style.ACCENT, Dash.NONE, points);
        graph.dot(here.result("run-time").text(), current.value(), hours);
        return graph.picture(
                "Run time against the current drawn",
                "A line falls from left to right, steeply at first: half the current lasts twice as long. At " + current.text()
                        + " the battery lasts " + here.result("run-time").text() + ".");
    }
}
