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
import loomwright.quantity.Unit;
import loomwright.quantity.Units;

/** Current and power of a fixed resistance against voltage: one rises evenly, the other ever faster. */
final class ResistorPowerAgainstVoltage implements Drawing {
    @Override
    public String name() {
        return "resistor-power-against-voltage";
    }

    @Override
    public List<String> takes() {
        return List.of("resistance", "lowest", "nominal", "highest");
    }

    @Override
    public Picture draw(Given given) {
        given.rising(Units.VOLT, "lowest", "nominal", "highest");
        given.number("resistance", Units.OHM);
        Graph current = graph(given, "Current (mA)", "current", Units.MILLIAMPERE);
        Graph power = graph(given, "Power turned into heat (W)", "power", Units.WATT);
        return Graph.picture(
                "Current and heat of a resistance of " + given.label("resistance"),
                "Two graphs over the supply voltage from " + given.text("lowest") + " to " + given.text("highest")
                        + ". The current is a straight line that rises evenly. The power is a curve that bends upward. Dots mark "
                        + given.text("nominal") + " and " + given.text("highest") + " on both.",
                List.of(current, power));
    }

    private static Graph graph(Given given, String title, String result, Unit unit) {
        double highest = given.number("highest", Units.VOLT);
        Axis across = Axis.linear("Supply voltage (V)", given.number("lowest", Units.VOLT), highest);
        Axis up = Axis.fromZero(title, 1.2 * computed(given, highest, result, unit).value()).parts(4);
        Graph graph = new Graph(across, up);
        List<Point> points = new ArrayList<>();
        for (double voltage : across.samples(4)) {
            points.add(new Point(voltage, computed(given, voltage, result, unit).value()));
        }
        graph.line("", Style.ACCENT, Dash.NONE, points);
        for (String marked : List.of("nominal", "highest")) {
            double voltage = given.number(marked, Units.VOLT);
            Quantity value = computed(given, voltage, result, unit);
            graph.dot(value.text(3), voltage, value.value());
        }
        return graph;
    }

    private static Quantity computed(Given given, double voltage, String result, Unit unit) {
        return Computed.by("ohm-and-power")
                .with("voltage", voltage, Units.VOLT)
                .with("resistance", given.text("resistance"))
                .result(result, unit);
    }
}
