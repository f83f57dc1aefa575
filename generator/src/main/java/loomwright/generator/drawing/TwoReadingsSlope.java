package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Dash;
import loomwright.picture.Graph;
import loomwright.picture.Picture;
import loomwright.picture.Point;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** Two readings at one point, joined by a line: the steeper it falls, the more resistance lies before the point. */
final class TwoReadingsSlope implements Drawing {
    @Override
    public String name() {
        return "two-readings-slope";
    }

    @Override
    public List<String> takes() {
        return List.of("voltage-light", "current-light", "voltage-heavy", "current-heavy", "known-resistance");
    }

    @Override
    public Picture draw(Given given) {
        given.rising(Units.AMPERE, "current-light", "current-heavy");
        given.rising(Units.VOLT, "voltage-heavy", "voltage-light");
        double light = given.number("current-light", Units.AMPERE);
        double heavy = given.number("current-heavy", Units.AMPERE);
        double high = given.number("voltage-light", Units.VOLT);
        double low = given.number("voltage-heavy", Units.VOLT);
        double known = given.number("known-resistance", Units.MILLIOHM);
        double lost = Computed.by("ohm-and-power")
                .with("current", heavy - light, Units.AMPERE)
                .with("resistance", known, Units.MILLIOHM)
                .number("voltage", Units.VOLT);
        if (high - lost < low) {
            throw given.fault("known-resistance", "is more than the two readings show");
        }
        double bottom = Math.floor((low - 0.15) * 5) / 5;
        double top = Math.ceil((high + 0.05) * 5) / 5;
        Graph graph = new Graph(Axis.fromZero("Current (A)", 1.2 * heavy), Axis.linear("Reading (V)", bottom, top));
        graph.line("sound", Style.INK, Dash.LONG, List.of(new Point(light, high), new Point(heavy, high - lost)));
        graph.line("read: " + given.label("voltage-heavy"), Style.ACCENT, Dash.NONE, List.of(new Point(light, high), new Point(heavy, low)));
        graph.dot(given.label("voltage-light"), light, high);
        graph.dot("", heavy, low);
        return graph.picture(
                "Two readings against what a sound circuit gives",
                "A graph of reading against current. A solid line falls from " + given.text("voltage-light") + " at " + given.text("current-light")
                        + " to " + given.text("voltage-heavy") + " at " + given.text("current-heavy") + ". A dashed line from the same first point,"
                        + " for a sound circuit of " + given.text("known-resistance") + ", falls only to "
                        + Quantity.of(high - lost, Units.VOLT).text(4) + ".");
    }
}
