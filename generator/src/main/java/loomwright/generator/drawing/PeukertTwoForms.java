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

/** Hours a lead-acid battery lasts against current: by its rating, by the 1 A form with the wrong capacity, and without Peukert's law. */
final class PeukertTwoForms implements Drawing {
    private static final double TIMES_THE_RATED_CURRENT = 4;

    @Override
    public String name() {
        return "peukert-two-forms";
    }

    @Override
    public List<String> takes() {
        return List.of("capacity", "rated-time", "exponent");
    }

    @Override
    public Picture draw(Given given) {
        given.number("capacity", Units.AMPERE_HOUR);
        given.bareNumber("exponent");
        double hours = given.number("rated-time", Units.HOUR);
        Quantity rated = peukert(given, 1).result("rated-current", Units.AMPERE);
        double least = rated.value();
        Quantity misused = peukert(given, least).result("other-form-time", Units.HOUR);
        Axis across = Axis.linear("Current (A)", 0, TIMES_THE_RATED_CURRENT * least).parts(4);
        Graph graph = new Graph(across, Axis.fromZero("Hours until empty", 1.1 * hours));
        graph.line("Ah ÷ A", Style.INK, Dash.SHORT, points(given, across, least, "plain"));
        graph.line("right form", Style.ACCENT, Dash.NONE, points(given, across, least, "run-time"));
        graph.line("wrong form", Style.WARN, Dash.LONG, points(given, across, least, "other-form-time"));
        graph.ring(given.label("rated-time"), least, hours);
        graph.dot("", least, misused.value());
        return graph.picture(
                "Hours of a lead-acid battery against current",
                "A graph of hours until empty against current, from " + rated.text(3) + " to four times as much. The line of the right form begins"
                        + " at " + given.text("rated-time") + ", the hours of the rating, and falls steeply. Ampere-hours divided by amperes begins"
                        + " at the same point and lies above it. The line of the wrong form begins at only " + misused.text(3) + ".");
    }

    private static Computed peukert(Given given, double amperes) {
        return Computed.by("peukert")
                .with("capacity-is", "rated-hours")
                .with("capacity", given.text("capacity"))
                .with("rated-time", given.text("rated-time"))
                .with("exponent", given.text("exponent"))
                .with("load-current", amperes, Units.AMPERE);
    }

    private static List<Point> points(Given given, Axis across, double least, String result) {
        List<Point> points = new ArrayList<>();
        for (double current : across.samples(5)) {
            if (current >= least) {
                boolean plain = result.equals("plain");
                points.add(new Point(current, plain ? plain(given, current) : peukert(given, current).number(result, Units.HOUR)));
            }
        }
        return points;
    }

    private static double plain(Given given, double amperes) {
        return Computed.by("run-time")
                .with("capacity", given.text("capacity"))
                .with("usable-depth", "100 %")
                .with("load-current", amperes, Units.AMPERE)
                .number("run-time", Units.HOUR);
    }
}
