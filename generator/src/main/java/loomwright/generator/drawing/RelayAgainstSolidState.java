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

/** Watts lost in a relay and in a MOS switch against the current they pass, and where the two lines cross. */
final class RelayAgainstSolidState implements Drawing {
    /** The calculator does not take a current of nothing. */
    private static final double LEAST = 0.01;

    @Override
    public String name() {
        return "relay-against-solid-state";
    }

    @Override
    public List<String> takes() {
        return List.of("coil-resistance", "on-resistance", "trigger-current", "supply-voltage", "largest-current");
    }

    @Override
    public Picture draw(Given given) {
        given.number("coil-resistance", Units.OHM);
        given.number("on-resistance", Units.MILLIOHM);
        given.number("trigger-current", Units.MILLIAMPERE);
        given.number("supply-voltage", Units.VOLT);
        double largest = given.number("largest-current", Units.AMPERE);
        Axis across = Axis.fromZero("Current to the loads (A)", largest);
        Axis up = Axis.fromZero("Lost in the switch (W)", watts(given, "solid-power", largest)).parts(4);
        Graph graph = new Graph(across, up);
        graph.line("relay", Style.INK, Dash.LONG, line(given, "relay-power", across, largest));
        graph.line("MOS", Style.ACCENT, Dash.NONE, line(given, "solid-power", across, largest));
        Quantity even = compare(given, largest).result("break-even-current", Units.AMPERE);
        graph.ring("even at " + even.text(2), even.value(), watts(given, "relay-power", even.value()));
        return graph.picture(
                "Watts lost in a relay and in a MOS switch",
                "A graph of the watts lost in the switch against the current to the loads. The line of the relay is level, as its coil takes"
                        + " the same whatever flows. The line of the MOS switch begins far below it and bends upward. They cross at "
                        + even.text(2) + ".");
    }

    private static List<Point> line(Given given, String result, Axis across, double largest) {
        List<Point> points = new ArrayList<>();
        for (double current : across.samples(4, largest)) {
            if (current <= largest) {
                points.add(new Point(current, watts(given, result, current)));
            }
        }
        return points;
    }

    private static double watts(Given given, String result, double current) {
        return compare(given, current).number(result, Units.WATT);
    }

    private static Computed compare(Given given, double current) {
        return Computed.by("switch-compare")
                .with("current", Math.max(LEAST, current), Units.AMPERE)
                .with("coil-resistance", given.text("coil-resistance"))
                .with("on-resistance", given.text("on-resistance"))
                .with("trigger-current", given.text("trigger-current"))
                .with("supply-voltage", given.text("supply-voltage"));
    }
}
