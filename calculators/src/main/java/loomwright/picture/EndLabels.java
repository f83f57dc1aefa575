package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/** Writes the label of each line at its end: beside the plot, above it where the line runs out over the top, or else inside it. */
final class EndLabels {
    private static final Lettering LETTERING = GraphFrame.LETTERING;

    private final Graph graph;
    private final Canvas canvas;
    private final GraphFrame frame;
    private final LabelPlacer placer;

    EndLabels(Graph graph, Canvas canvas, GraphFrame frame, LabelPlacer placer) {
        this.graph = graph;
        this.canvas = canvas;
        this.frame = frame;
        this.placer = placer;
    }

    /** A label and the point its line ends at. */
    private record End(double x, double y, List<String> lines) {}

    void paint() {
        List<End> beside = new ArrayList<>();
        List<End> above = new ArrayList<>();
        for (Series line : graph.series) {
            List<Segment> pieces = frame.pieces(line);
            if (line.label().isEmpty() || pieces.isEmpty()) {
                continue;
            }
            Segment last = pieces.get(pieces.size() - 1);
            if (frame.leavesAbove(line)) {
                insert(above, new End(last.x2(), last.y2(), List.of(line.label())), true);
            } else if (frame.endsInside(line)) {
                placer.place(along(pieces, line.label()));
            } else {
                insert(beside, new End(last.x2(), last.y2(), frame.endLabel(line)), false);
            }
        }
        for (int row = 0; row < frame.rowsAbove; row++) {
            above(everySecond(above, row, frame.rowsAbove), frame.plot.top() - 6 - row * LETTERING.lineHeight());
        }
        beside(beside);
    }

    /** Adds an end where it belongs: from left to right, or from the top down. */
    private static void insert(List<End> ends, End end, boolean leftToRight) {
        int at = ends.size();
        while (at > 0 && (leftToRight ? ends.get(at - 1).x() > end.x() : ends.get(at - 1).y() > end.y())) {
            at--;
        }
        ends.add(at, end);
    }

    private static List<End> everySecond(List<End> ends, int first, int step) {
        List<End> some = new ArrayList<>();
        for (int i = first; i < ends.size(); i += step) {
            some.add(ends.get(i));
        }
        return some;
    }

    /** Places for a label along a line, those at its end first. */
    private static List<Label> along(List<Segment> pieces, String label) {
        List<Label> places = new ArrayList<>();
        for (int i = pieces.size() - 1; i >= 0; i--) {
            Segment piece = pieces.get(i);
            places.addAll(LabelPlacer.around(piece.x2(), piece.y2(), 4, label));
            places.addAll(LabelPlacer.around((piece.x1() + piece.x2()) / 2, (piece.y1() + piece.y2()) / 2, 4, label));
        }
        return places;
    }

    /** Writes labels in a row above the plot, each over the end of its line as far as there is room. */
    private void above(List<End> ends, double base) {
        double[] middles = new double[ends.size()];
        double[] widths = new double[ends.size()];
        for (int i = 0; i < middles.length; i++) {
            middles[i] = ends.get(i).x();
            widths[i] = LETTERING.width(ends.get(i).lines().get(0));
        }
        double[] lefts = Spread.apart(middles, widths, GraphFrame.APART, 0, Picture.WIDTH);
        for (int i = 0; i < lefts.length; i++) {
            canvas.text(lefts[i], base, Anchor.START, LETTERING, ends.get(i).lines());
        }
    }

    /** Writes labels beside the plot, from the top down, each with a leader to its line. */
    private void beside(List<End> ends) {
        double lineHeight = LETTERING.lineHeight();
        double[] middles = new double[ends.size()];
        double[] heights = new double[ends.size()];
        for (int i = 0; i < middles.length; i++) {
            middles[i] = ends.get(i).y();
            heights[i] = lineHeight * ends.get(i).lines().size();
        }
        double right = frame.plot.right();
        double from = frame.rowsAbove > 0 ? frame.plot.top() - 3 : frame.plot.top() - lineHeight;
        double[] tops = Spread.apart(middles, heights, 4, from, frame.plot.bottom() + lineHeight / 2);
        for (int i = 0; i < tops.length; i++) {
            canvas.line(Style.FAINT, right, middles[i], right + GraphFrame.LEADER - 3, tops[i] + heights[i] / 2);
            canvas.text(right + GraphFrame.LEADER, tops[i] + 0.75 * lineHeight, Anchor.START, LETTERING, ends.get(i).lines());
        }
    }
}
