package loomwright.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Writes the label of each line at its end: to the right of the plot, or above it where the line runs out over the top. */
final class EndLabels {
    private static final double APART = 4;

    private final Graph graph;
    private final Canvas canvas;
    private final GraphFrame frame;

    EndLabels(Graph graph, Canvas canvas, GraphFrame frame) {
        this.graph = graph;
        this.canvas = canvas;
        this.frame = frame;
    }

    /** A label with the height its line ends at. */
    private record End(double y, List<String> lines) {}

    void paint() {
        List<End> ends = new ArrayList<>();
        double freeFrom = 0;
        for (Series line : graph.series) {
            List<Segment> pieces = frame.pieces(line);
            if (line.label().isEmpty() || pieces.isEmpty()) {
                continue;
            }
            Segment last = pieces.get(pieces.size() - 1);
            if (frame.leavesAbove(line)) {
                freeFrom = above(line.label(), last.x2(), freeFrom);
            } else {
                ends.add(new End(last.y2(), frame.endLabel(line)));
            }
        }
        ends.sort(Comparator.comparingDouble(End::y));
        beside(ends);
    }

    /** Writes a label above the plot, not left of {@code freeFrom}, and answers where the next may begin. */
    private double above(String label, double x, double freeFrom) {
        double width = GraphFrame.LETTERING.width(label);
        double left = Math.max(Math.min(x - width / 2, Picture.WIDTH - width), freeFrom);
        canvas.text(left, frame.plot.top() - 6, Anchor.START, GraphFrame.LETTERING, label);
        return left + width + 8;
    }

    /** Writes labels beside the plot, from the top down, pushed apart where lines end close together, each with a leader to its line. */
    private void beside(List<End> ends) {
        double lineHeight = GraphFrame.LETTERING.lineHeight();
        double[] tops = new double[ends.size()];
        double free = frame.plot.top() - lineHeight;
        for (int i = 0; i < tops.length; i++) {
            double height = lineHeight * ends.get(i).lines().size();
            tops[i] = Math.max(ends.get(i).y() - height / 2, free);
            free = tops[i] + height + APART;
        }
        double limit = frame.plot.bottom() + lineHeight / 2;
        for (int i = tops.length - 1; i >= 0; i--) {
            double height = lineHeight * ends.get(i).lines().size();
            tops[i] = Math.min(tops[i], limit - height);
            limit = tops[i] - APART;
        }
        for (int i = 0; i < tops.length; i++) {
            List<String> lines = ends.get(i).lines();
            double right = frame.plot.right();
            canvas.line(Style.FAINT, right, ends.get(i).y(), right + GraphFrame.LEADER - 3, tops[i] + lineHeight * lines.size() / 2);
            canvas.text(right + GraphFrame.LEADER, tops[i] + 0.75 * lineHeight, Anchor.START, GraphFrame.LETTERING, lines);
        }
    }
}
