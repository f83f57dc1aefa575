package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Dash;
import loomwright.picture.Graph;
import loomwright.picture.Picture;
import loomwright.picture.Point;
import loomwright.picture.Style;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** Voltage drop against route length for four sizes, with the two usual allowances. */
final class DropAgainstRouteLength implements Drawing {
    private static final List<String> SIZES = List.of("1.5 mm²", "2.5 mm²", "4 mm²", "6 mm²");
    private static final List<Dash> DASHES = List.of(Dash.LONG_SHORT, Dash.NONE, Dash.LONG, Dash.SHORT);
    private static final double LONGEST_METRES = 10;

    @Override
    public String name() {
        return "drop-against-route-length";
    }

    @Override
    public List<String> takes() {
        return List.of("current", "conductor", "route-length");
    }

    @Override
    public Picture draw(Given given) {
        Axis across = Axis.linear("Route length (m)", 0, LONGEST_METRES);
        Graph graph = new Graph(across, Axis.linear("Voltage drop (V)", 0, 1.4).parts(7));
        given.number("current", Units.AMPERE);
        given.option("conductor", "voltage-drop");
        double marked = given.number("route-length", Units.METRE);
        graph.upright(given.text("route-length"), marked);
        graph.limit("10 % of 12 V", allowance("abyc-other", 10));
        graph.limit("3 % of 12 V", allowance("abyc-main", 3));
        for (int i = 0; i < SIZES.size(); i++) {
            Style style = i == 1 ? Style.ACCENT : Style.INK;
            graph.line(SIZES.get(i).replace(' ', '\u00a0'), style, DASHES.get(i), points(given, SIZES.get(i), across.samples(1, marked)));
        }
        return graph.picture(
                "Voltage drop against route length",
                "Four straight lines rise from zero, for 1.5, 2.5, 4 and 6 mm² at " + given.text("current")
                        + ". Two level lines mark 3 % and 10 % of 12 V. A dotted upright line marks " + given.text("route-length") + ".");
    }

    private static List<Point> points(Given given, String size, List<Double> lengths) {
        List<Point> points = new ArrayList<>();
        for (double length : lengths) {
            points.add(new Point(length, length == 0 ? 0 : drop(given, size, length)));
        }
        return points;
    }

    /** The allowance of a rule set in volts; its share is in the words beside the line, so it must be the one expected. */
    private static double allowance(String rule, double percent) {
        Row row = PublishedTables.voltageDropAllowance().row(rule);
        if (row.quantity("allowance").value() != percent) {
            throw new IllegalStateException("the allowance " + rule + " is no longer the one this graph names");
        }
        return row.quantity("allowance-in-volts").value();
    }

    private static double drop(Given given, String size, double length) {
        return Computed.by("voltage-drop")
                .with("method", "table")
                .with("conductor", given.text("conductor"))
                .with("size", size)
                .with("current", given.text("current"))
                .with("route-length", length, Units.METRE)
                .with("length-counts", "one-way")
                .with("temperature", "20 °C")
                .number("drop", Units.VOLT);
    }
}
