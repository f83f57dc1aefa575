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

/** Heat of a good and of a bad joint against the current: it grows with the square. */
final class JointHeatAgainstCurrent implements Drawing {
    private static final double LARGEST_AMPERES = 15;

    @Override
    public String name() {
        return "joint-heat-against-current";
    }

    @Override
    public List<String> takes() {
        return List.of("good-reading", "bad-reading", "test-current", "span", "resistance-per-metre", "design-current");
    }

    @Override
    public Picture draw(Given given) {
        given.number("span", Units.MILLIMETRE);
        given.number("resistance-per-metre", Units.MILLIOHM_PER_METRE);
        given.number("test-current", Units.AMPERE);
        given.number("good-reading", Units.MILLIVOLT);
        given.number("bad-reading", Units.MILLIVOLT);
        double marked = given.number("design-current", Units.AMPERE);
        if (marked > LARGEST_AMPERES) {
            throw given.fault("design-current", "must be no more than 15 A");
        }
        Quantity bad = joint(given, "bad-reading", LARGEST_AMPERES).result("joint-resistance", Units.MILLIOHM);
        Quantity good = joint(given, "good-reading", LARGEST_AMPERES).result("joint-resistance", Units.MILLIOHM);
        Axis across = Axis.linear("Current (A)", 0, LARGEST_AMPERES);
        Graph graph = new Graph(across, Axis.fromZero("Heat in the joint (W)", heat(given, "bad-reading", LARGEST_AMPERES)));
        graph.upright(given.text("design-current"), marked);
        graph.line("bad", Style.ACCENT, Dash.NONE, points(given, "bad-reading", across.samples(2, marked)));
        graph.line("good", Style.INK, Dash.LONG, points(given, "good-reading", across.samples(2, marked)));
        return graph.picture(
                "Heat in a joint against the current",
                "Two lines over current from 0 to 15 A. The line of a bad joint of " + bad.text(3) + " bends upwards: with twice the current the heat is"
                        + " four times as much. The line of a good joint of " + good.text(3) + " lies on the base line. A dotted upright line marks "
                        + given.text("design-current") + ".");
    }

    private static List<Point> points(Given given, String reading, List<Double> currents) {
        List<Point> points = new ArrayList<>();
        for (double current : currents) {
            points.add(new Point(current, current == 0 ? 0 : heat(given, reading, current)));
        }
        return points;
    }

    private static double heat(Given given, String reading, double amperes) {
        return joint(given, reading, amperes).number("joint-heat", Units.WATT);
    }

    private static Computed joint(Given given, String reading, double amperes) {
        return Computed.by("joint-heat")
                .with("reading", given.text(reading))
                .with("test-current", given.text("test-current"))
                .with("span", given.text("span"))
                .with("resistance-per-metre", given.text("resistance-per-metre"))
                .with("design-current", amperes, Units.AMPERE);
    }
}
