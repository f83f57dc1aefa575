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

/** Heat in the contacts of an outlet against the current, for good and for worn ones. */
final class ContactHeat implements Drawing {
    /** The calculator does not take a current of nothing. */
    private static final double LEAST = 0.01;

    @Override
    public String name() {
        return "contact-heat";
    }

    @Override
    public List<String> takes() {
        return List.of("good", "worn", "marked-current", "largest-current");
    }

    @Override
    public Picture draw(Given given) {
        given.rising(Units.MILLIOHM, "good", "worn");
        given.rising(Units.AMPERE, "marked-current", "largest-current");
        double marked = given.number("marked-current", Units.AMPERE);
        double largest = given.number("largest-current", Units.AMPERE);
        Axis across = Axis.fromZero("Current (A)", largest);
        Axis up = Axis.fromZero("Heat in the contacts (W)", heat(given, "worn", largest).value()).parts(4);
        Graph graph = new Graph(across, up);
        graph.line("worn", Style.WARN, Dash.LONG, line(given, "worn", across, largest));
        graph.line("good", Style.ACCENT, Dash.NONE, line(given, "good", across, largest));
        Quantity worn = heat(given, "worn", marked);
        Quantity good = heat(given, "good", marked);
        graph.dot(worn.text(2), marked, worn.value());
        graph.dot(good.text(2), marked, good.value());
        return graph.picture(
                "Heat in the contacts against the current",
                "Two curves of the heat in the contacts that bend upward with the current. At " + given.text("marked-current") + " worn contacts of "
                        + given.text("worn") + " make " + worn.text(2) + "; good ones of " + given.text("good") + " make " + good.text(2) + ".");
    }

    private static List<Point> line(Given given, String contacts, Axis across, double largest) {
        List<Point> points = new ArrayList<>();
        for (double current : across.samples(4, largest)) {
            if (current <= largest) {
                points.add(new Point(current, heat(given, contacts, current).value()));
            }
        }
        return points;
    }

    private static Quantity heat(Given given, String contacts, double current) {
        return Computed.by("outlet-load")
                .with("kind", "lighter")
                .with("rating", "60 A")
                .with("current", Math.max(LEAST, current), Units.AMPERE)
                .with("contact-resistance", given.text(contacts))
                .result("contact-heat", Units.WATT);
    }
}
