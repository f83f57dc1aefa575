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

/** How the current of three kinds of load follows the supply voltage; all draw the same at the nominal voltage. */
final class LoadKindsCurrentAgainstVoltage implements Drawing {
    @Override
    public String name() {
        return "load-kinds-current-against-voltage";
    }

    @Override
    public List<String> takes() {
        return List.of("power-drawn-at-nominal", "lowest", "nominal", "highest");
    }

    @Override
    public Picture draw(Given given) {
        given.rising(Units.VOLT, "lowest", "nominal", "highest");
        given.number("power-drawn-at-nominal", Units.WATT);
        double lowest = given.number("lowest", Units.VOLT);
        double nominal = given.number("nominal", Units.VOLT);
        double highest = given.number("highest", Units.VOLT);
        Quantity heater = current(given, "resistive", highest);
        Quantity charger = current(given, "constant-power", lowest);
        Axis across = Axis.linear("Supply voltage (V)", lowest, highest).parts(5);
        Axis up = Axis.fromZero("Current (A)", 1.1 * Math.max(heater.value(), charger.value())).parts(3);
        Graph graph = new Graph(across, up);
        graph.line("resistive", Style.INK, Dash.LONG, points(given, "resistive", across, nominal));
        graph.line("constant current", Style.INK, Dash.SHORT, points(given, "constant-current", across, nominal));
        graph.line("constant power", Style.ACCENT, Dash.NONE, points(given, "constant-power", across, nominal));
        graph.ring(charger.text(3), lowest, charger.value());
        graph.ring(heater.text(3), highest, heater.value());
        return graph.picture(
                "Current of three kinds of load against voltage",
                "A graph of current against the supply voltage from " + given.text("lowest") + " to " + given.text("highest")
                        + ". Three lines cross at " + given.text("nominal") + ". The constant-power line is highest at the lowest voltage, "
                        + charger.text(3) + ", and falls to the right. The resistive line rises to the right, to " + heater.text(3)
                        + ". The constant-current line is level.");
    }

    private static List<Point> points(Given given, String kind, Axis across, double nominal) {
        List<Point> points = new ArrayList<>();
        for (double voltage : across.samples(4, nominal)) {
            points.add(new Point(voltage, current(given, kind, voltage).value()));
        }
        return points;
    }

    /** The calculator looks at both sides of the nominal voltage; the side where {@code voltage} lies answers. */
    private static Quantity current(Given given, String kind, double voltage) {
        double nominal = given.number("nominal", Units.VOLT);
        return Computed.by("device-current")
                .with("power", given.text("power-drawn-at-nominal"))
                .with("efficiency", "100 %")
                .with("supply-voltage", given.text("nominal"))
                .with("lowest-voltage", Math.min(voltage, nominal), Units.VOLT)
                .with("highest-voltage", Math.max(voltage, nominal), Units.VOLT)
                .with("load-kind", kind)
                .result(voltage < nominal ? "current-at-lowest" : "current-at-highest", Units.AMPERE);
    }
}
