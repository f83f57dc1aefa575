package loomwright.picture;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.NumberText;

/** A graph: two axes, lines labelled at their ends, limits, and marked points. */
public final class Graph {
    /** A limit that the lines are judged against. */
    record Limit(String label, double y) {}

    /** A value on the lower axis that is pointed out. */
    record Upright(String label, double x) {}

    /** A point that is pointed out: a dot, or a ring round it. */
    record Mark(String label, Point at, boolean ringed) {}

    private static final double PLOT = 206;
    private static final double SMALL_PLOT = 140;
    /** Room below the plot for numbers and title, or for one of them. */
    private static final double FOOT = 46;

    private static final double SHORT_FOOT = 30;

    final Axis across;
    final Axis up;
    final List<Series> series = new ArrayList<>();
    final List<Limit> limits = new ArrayList<>();
    final List<Upright> uprights = new ArrayList<>();
    final List<Mark> marks = new ArrayList<>();

    public Graph(Axis across, Axis up) {
        this.across = across;
        this.up = up;
    }

    public Graph line(String label, Style style, Dash dash, List<Point> points) {
        series.add(new Series(label, style, dash, points));
        return this;
    }

    /** A level line at {@code y}. */
    public Graph limit(String label, double y) {
        limits.add(new Limit(label, y));
        return this;
    }

    /** A dotted line up from {@code x}. */
    public Graph upright(String label, double x) {
        uprights.add(new Upright(label, x));
        return this;
    }

    /** A dot on a line; the label may be empty. */
    public Graph dot(String label, double x, double y) {
        marks.add(new Mark(label, new Point(x, y), false));
        return this;
    }

    /** A ring round a point of a line; the label may be empty. */
    public Graph ring(String label, double x, double y) {
        marks.add(new Mark(label, new Point(x, y), true));
        return this;
    }

    public Picture picture(String title, String description) {
        return picture(title, description, List.of(this));
    }

    /** Graphs with one lower axis in common, below each other. */
    public static Picture picture(String title, String description, List<Graph> graphs) {
        Canvas canvas = new Canvas();
        FigureTable figures = FigureTable.NONE;
        double numbers = 0;
        for (Graph graph : graphs) {
            numbers = Math.max(numbers, GraphFrame.numbers(graph));
        }
        double top = 0;
        for (int i = 0; i < graphs.size(); i++) {
            Graph graph = graphs.get(i);
            boolean last = i == graphs.size() - 1;
            double foot = !last || graph.across.ticks().isEmpty() ? SHORT_FOOT : FOOT;
            double height = foot + (graphs.size() == 1 ? PLOT : SMALL_PLOT);
            new GraphPainter(graph, canvas, new GraphFrame(graph, top, height, numbers, foot)).paint(last);
            figures = figures.beside(graph.figures());
            top += height;
        }
        return new Picture(title, description, canvas, Picture.WIDTH, top).with(figures);
    }

    /** The height of every line at the numbers of the lower axis and at the marks. A sketch has none. */
    FigureTable figures() {
        if (across.ticks().isEmpty()) {
            return FigureTable.NONE;
        }
        List<String> heads = new ArrayList<>();
        heads.add(across.title());
        for (Series line : series) {
            heads.add(series.size() == 1 && line.label().isEmpty() ? up.title() : up.title() + ", " + line.label());
        }
        List<List<String>> rows = new ArrayList<>();
        for (double x : places()) {
            List<String> row = new ArrayList<>();
            row.add(NumberText.significant(x, 4));
            boolean known = false;
            for (Series line : series) {
                double y = line.at(x);
                known |= !Double.isNaN(y);
                row.add(Double.isNaN(y) ? "" : NumberText.significant(y, 3));
            }
            if (known) {
                rows.add(row);
            }
        }
        return new FigureTable(heads, rows);
    }

    private List<Double> places() {
        Rising places = new Rising();
        for (Tick tick : across.ticks()) {
            places.add(tick.value());
        }
        for (Mark mark : marks) {
            places.add(mark.at.x());
        }
        for (Upright upright : uprights) {
            places.add(upright.x);
        }
        return places.list();
    }
}
