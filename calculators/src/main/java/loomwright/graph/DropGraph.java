package loomwright.graph;

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
import loomwright.table.PublishedTables;

/** Voltage drop against route length, for the size entered and its neighbours. */
final class DropGraph implements CalculatorGraph {
    private static final List<String> METRIC = List.of(
            "0.5 mm²", "0.75 mm²", "1 mm²", "1.5 mm²", "2.5 mm²", "4 mm²", "6 mm²", "10 mm²", "16 mm²", "25 mm²", "35 mm²", "50 mm²", "70 mm²");
    private static final List<String> GAUGES = List.of(
            "20 AWG", "18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG", "2 AWG", "1 AWG", "1/0 AWG", "2/0 AWG");
    private static final List<Dash> DASHES = List.of(Dash.SHORT, Dash.LONG, Dash.LONG_SHORT, Dash.DOTS);
    private static final int NEIGHBOURS = 3;

    @Override
    public String calculator() {
        return "voltage-drop";
    }

    @Override
    public Picture draw(Rerun here) {
        Quantity route = here.entry("route-length");
        Unit unit = route.unit();
        double drop = here.result("drop").in(Units.VOLT).value();
        double supply = here.entry("supply-voltage").in(Units.VOLT).value();
        Axis across = Axis.fromZero("Length as entered (" + unit.symbol() + ")", route.value() * 1.6);
        List<Double> limits = limits(supply);
        Axis up = Axis.fromZero("Voltage drop (V)", Math.min(Math.max(drop * 1.4, limits.get(0) * 1.3), supply));
        Graph graph = new Graph(across, up);
        graph.upright(route.text(), route.value());
        List<Double> lengths = across.samples(1, route.value());
        int drawn = 0;
        for (String size : neighbours(here)) {
            graph.line(label(size), Style.INK, DASHES.get(drawn++), line(here.with("size", size), lengths, unit));
        }
        graph.line(own(here), Style.ACCENT, Dash.NONE, line(here, lengths, unit));
        graph.dot("", route.value(), drop);
        addLimits(graph, limits, up.to(), supply);
        return graph.picture(
                "Voltage drop against length",
                "Straight lines rise from zero, one for each size; the bold one is the run entered. At " + route.text() + " it loses "
                        + here.result("drop").text() + ". Level lines mark the usual allowances.");
    }

    private static List<Point> line(Rerun rerun, List<Double> lengths, Unit unit) {
        List<Point> points = new ArrayList<>();
        points.add(new Point(0, 0));
        points.addAll(rerun.points("route-length", lengths.subList(1, lengths.size()), unit, "drop", Units.VOLT));
        return points;
    }

    /** The two allowances in common use, in volts: the narrow one first. */
    private static List<Double> limits(double supply) {
        List<Double> limits = new ArrayList<>();
        for (String rule : List.of("abyc-main", "abyc-other")) {
            limits.add(PublishedTables.voltageDropAllowance().row(rule).quantity("allowance").base() * supply);
        }
        return limits;
    }

    private static void addLimits(Graph graph, List<Double> limits, double top, double supply) {
        for (double limit : limits) {
            if (limit <= top) {
                graph.limit(Quantity.ofBase(limit / supply, Units.PERCENT).text(3) + " of the supply", limit);
            }
        }
    }

    /** The next standard sizes on both sides that the calculator knows for this kind of conductor; none if no size is entered. */
    private static List<String> neighbours(Rerun here) {
        List<String> neighbours = new ArrayList<>();
        Quantity size = here.entry("size");
        if (size == null || here.choice("method").equals("given-resistance")) {
            return neighbours;
        }
        List<String> steps = size.unit() == Units.AWG ? GAUGES : METRIC;
        int own = steps.indexOf(size.text().replace('\u00a0', ' '));
        for (int i = Math.max(0, own - 1); own >= 0 && i < steps.size() && neighbours.size() < NEIGHBOURS; i++) {
            if (i != own && !Double.isNaN(here.with("size", steps.get(i)).with("route-length", "0.05 m").number("drop", Units.VOLT))) {
                neighbours.add(steps.get(i));
            }
        }
        return neighbours;
    }

    private static String own(Rerun here) {
        boolean sized = here.entry("size") != null && !here.choice("method").equals("given-resistance");
        return sized ? label(here.entry("size").text()) : "as entered";
    }

    private static String label(String size) {
        return size.replace(' ', '\u00a0');
    }
}
