package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/** Where the parts of a graph lie on the canvas. */
final class GraphFrame {
    static final Lettering LETTERING = Lettering.SMALL;
    private static final double WIDEST_END_LABEL = 78;
    private static final double GAP = 6;
    /** The room between the plot and the labels at the ends of its lines. */
    static final double LEADER = 15;

    /** The room between two labels above the plot. */
    static final double APART = 8;

    private final Graph graph;
    /** The plot: everything between the axes. */
    final Box plot;
    /** How many rows the labels of lines need that run out over the top. */
    final int rowsAbove;
    /** The base line of the title of the upright axis. */
    final double titleBase;

    /**
     * A frame on a strip of the canvas.
     *
     * @param numbers the room for the numbers of the upright axis
     * @param foot the room below the plot
     */
    GraphFrame(Graph graph, double top, double height, double numbers, double foot) {
        this.graph = graph;
        this.titleBase = top + 15;
        double above = 0;
        double endLabels = 0;
        for (Series line : graph.series) {
            if (leavesAbove(line)) {
                above += LETTERING.width(line.label()) + APART;
            } else if (!endsInside(line)) {
                for (String part : endLabel(line)) {
                    endLabels = Math.max(endLabels, LETTERING.width(part) + LEADER);
                }
            }
        }
        this.rowsAbove = (int) Math.ceil(above / Picture.WIDTH);
        double halfLastNumber = 14;
        double right = Picture.WIDTH - Math.max(endLabels + 2, halfLastNumber);
        this.plot = new Box(
                Math.max(numbers + GAP + 4, halfLastNumber), top + 30 + rowsAbove * LETTERING.lineHeight(), right, top + height - foot);
    }

    /** The width of the widest number of the upright axis. */
    static double numbers(Graph graph) {
        double widest = 0;
        for (Tick tick : graph.up.ticks()) {
            widest = Math.max(widest, LETTERING.width(tick.text()));
        }
        return widest;
    }

    double x(double value) {
        return graph.across.place(value, plot.left(), plot.right());
    }

    double y(double value) {
        return graph.up.place(value, plot.bottom(), plot.top());
    }

    /** The label of a line, cut so that the plot keeps most of the canvas. */
    List<String> endLabel(Series line) {
        return Wrap.lines(line.label(), LETTERING, WIDEST_END_LABEL);
    }

    /** Whether the line runs out over the top of the plot. */
    boolean leavesAbove(Series line) {
        return line.points().get(line.points().size() - 1).y() > graph.up.to() * (1 + 1e-9);
    }

    /** Whether the line ends, or runs out below, before it reaches the right edge of the plot. */
    boolean endsInside(Series line) {
        Point end = line.points().get(line.points().size() - 1);
        return end.y() < graph.up.from() || end.x() < graph.across.to() * (1 - 1e-9);
    }

    /** The pieces of a line that lie inside the plot. */
    List<Segment> pieces(Series line) {
        List<Segment> pieces = new ArrayList<>();
        for (int i = 1; i < line.points().size(); i++) {
            Segment piece = inside(line.points().get(i - 1), line.points().get(i));
            if (piece != null) {
                pieces.add(piece);
            }
        }
        return pieces;
    }

    /** The piece between two points, cut off at the upper and lower edge of the plot. */
    private Segment inside(Point from, Point to) {
        double x1 = x(from.x());
        double y1 = y(from.y());
        double x2 = x(to.x());
        double y2 = y(to.y());
        if (Math.min(y1, y2) > plot.bottom() || Math.max(y1, y2) < plot.top()) {
            return null;
        }
        double slope = y1 == y2 ? 0 : (x2 - x1) / (y2 - y1);
        double start = Math.min(Math.max(y1, plot.top()), plot.bottom());
        double end = Math.min(Math.max(y2, plot.top()), plot.bottom());
        return new Segment(x1 + slope * (start - y1), start, x2 + slope * (end - y2), end);
    }
}
