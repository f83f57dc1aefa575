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

/** Temperature of the junction against the current switched. */
final class JunctionGraph implements CalculatorGraph {
    @Override
    public String calculator() {
        return "junction-temperature";
    }

    @Override
    public Picture draw(Rerun here) {
        Quantity current = here.entry("current").in(Units.AMPERE);
        Quantity limit = here.entry("junction-limit").in(Units.CELSIUS);
        Quantity junction = here.result("junction").in(Units.CELSIUS);
        double ambient = here.entry("ambient").in(Units.CELSIUS).value();
        Axis across = Axis.linear("Current switched (A)", current.value() * 0.2, current.value() * 1.6);
        List<Point> points =
                here.points("current", across.samples(1, current.value()), Units.AMPERE, "junction", Units.CELSIUS);
        double top = Math.max(limit.value() * 1.1, junction.value() * 1.1);
        Graph graph = new Graph(across, Axis.linear("Junction (°C)", Math.min(0, ambient), top));
        graph.upright(current.text(), current.value());
        graph.limit("limit " + limit.text(), limit.value());
        graph.line("", Style.ACCENT, Dash.NONE, points);
        graph.dot(junction.text(3), current.value(), junction.value());
        return graph.picture(
                "Temperature of the junction against the current",
                "A line rises with the current, with the drop of the switch taken as the same at every current. At " + current.text()
                        + " the junction is at " + junction.text(3) + ". A level line marks the limit of " + limit.text() + ".");
    }
}
