package loomwright.picture;

import java.util.List;

/** Draws one graph: grid, limits, lines, marks, and last the labels, each where it finds room. */
final class GraphPainter {
    private static final Lettering LETTERING = GraphFrame.LETTERING;
    private static final double DOT = 5;
    private static final double RING = 9;

    private final Graph graph;
    private final Canvas canvas;
    private final GraphFrame frame;
    private final Box plot;
    private final LabelPlacer placer;

    GraphPainter(Graph graph, Canvas canvas, GraphFrame frame) {
        this.graph = graph;
        this.canvas = canvas;
        this.frame = frame;
        this.plot = frame.plot;
        this.placer = new LabelPlacer(canvas, new Box(plot.left(), plot.top() - 10, plot.right(), plot.bottom()));
    }

    /** Draws it; the title of the lower axis is left to the last of several graphs. */
    void paint(boolean titled) {
        axes();
        if (titled) {
            title();
        }
        for (Graph.Upright upright : graph.uprights) {
            double x = frame.x(upright.x());
            canvas.path(Style.INK, Dash.DOTS, new Outline().move(x, plot.bottom()).line(x, plot.top()));
            placer.avoid(new Segment(x, plot.bottom(), x, plot.top()));
        }
        for (Graph.Limit limit : graph.limits) {
            double y = frame.y(limit.y());
            canvas.line(Style.WARN, plot.left(), y, plot.right(), y);
            placer.avoid(new Segment(plot.left(), y, plot.right(), y));
        }
        for (Series line : graph.series) {
            line(line);
        }
        new EndLabels(graph, canvas, frame, placer).paint();
        for (Graph.Mark mark : graph.marks) {
            dot(mark);
        }
        labels();
    }

    private void axes() {
        canvas.text(1, frame.titleBase, Anchor.START, LETTERING, graph.up.title());
        for (Tick tick : graph.up.ticks()) {
            double y = frame.y(tick.value());
            canvas.line(Style.FAINT, plot.left(), y, tick.isNumbered() ? plot.right() : plot.left() + 4, y);
            if (tick.isNumbered()) {
                canvas.text(plot.left() - 6, y + 5, Anchor.END, LETTERING, tick.text());
            }
        }
        double freeFrom = Double.NEGATIVE_INFINITY;
        for (Tick tick : graph.across.ticks()) {
            double x = frame.x(tick.value());
            canvas.line(Style.INK, x, plot.bottom(), x, plot.bottom() + (tick.isNumbered() ? 6 : 3));
            Label number = new Label(x, plot.bottom() + 20, Anchor.MIDDLE, LETTERING, tick.text());
            if (tick.isNumbered() && number.box().left() > freeFrom) {
                canvas.text(number);
                freeFrom = number.box().right() + 3;
            }
        }
        canvas.path(
                Style.INK,
                new Outline().move(plot.left(), plot.top()).line(plot.left(), plot.bottom()).line(plot.right(), plot.bottom()));
    }

    private void title() {
        double middle = (plot.left() + plot.right()) / 2;
        double halfTitle = LETTERING.width(graph.across.title()) / 2;
        double titleAt = Math.min(middle, Picture.WIDTH - halfTitle);
        canvas.text(titleAt, plot.bottom() + (graph.across.ticks().isEmpty() ? 20 : 38), Anchor.MIDDLE, LETTERING, graph.across.title());
    }

    private void line(Series line) {
        List<Segment> pieces = frame.pieces(line);
        Outline outline = new Outline();
        for (int i = 0; i < pieces.size(); i++) {
            Segment piece = pieces.get(i);
            if (i == 0) {
                outline.move(piece.x1(), piece.y1());
            }
            outline.line(piece.x2(), piece.y2());
            placer.avoid(piece);
        }
        canvas.path(line.style(), line.dash(), outline);
    }

    private void dot(Graph.Mark mark) {
        double x = frame.x(mark.at().x());
        double y = frame.y(mark.at().y());
        if (mark.ringed()) {
            canvas.circle(Style.INK, x, y, RING);
        } else {
            canvas.circle(Style.SOLID, x, y, DOT);
        }
    }

    private void labels() {
        for (Graph.Mark mark : graph.marks) {
            if (!mark.label().isEmpty()) {
                placer.place(around(mark));
            }
        }
        for (Graph.Limit limit : graph.limits) {
            double y = frame.y(limit.y());
            placer.place(List.of(
                    LabelPlacer.label(plot.left() + 6, y - 7, Anchor.START, limit.label()),
                    LabelPlacer.label(plot.right() - 4, y + 16, Anchor.END, limit.label()),
                    LabelPlacer.label(plot.right() - 4, y - 7, Anchor.END, limit.label()),
                    LabelPlacer.label(plot.left() + 6, y + 16, Anchor.START, limit.label())));
        }
        for (Graph.Upright upright : graph.uprights) {
            double x = frame.x(upright.x());
            placer.place(List.of(
                    LabelPlacer.label(x + 5, plot.bottom() - 7, Anchor.START, upright.label()),
                    LabelPlacer.label(x - 5, plot.bottom() - 7, Anchor.END, upright.label()),
                    LabelPlacer.label(x + 5, plot.top() + 12, Anchor.START, upright.label()),
                    LabelPlacer.label(x - 5, plot.top() + 12, Anchor.END, upright.label())));
        }
    }

    private List<Label> around(Graph.Mark mark) {
        double off = (mark.ringed() ? RING : DOT) + 3;
        return LabelPlacer.around(frame.x(mark.at().x()), frame.y(mark.at().y()), off, mark.label());
    }
}
