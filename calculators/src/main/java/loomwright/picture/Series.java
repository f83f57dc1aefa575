package loomwright.picture;

import java.util.List;

/**
 * A line of a graph.
 *
 * @param label what it is, written at its end
 * @param style {@link Style#ACCENT} for the one the graph is about, {@link Style#INK} for the others
 * @param dash its pattern, different for each line of the same style
 * @param points from left to right
 */
public record Series(String label, Style style, Dash dash, List<Point> points) {

    /** The height of the line at a point it was given, or not a number between them. */
    double at(double x) {
        for (Point point : points) {
            if (Math.abs(point.x() - x) <= 1e-9 * Math.max(1, Math.abs(x))) {
                return point.y();
            }
        }
        return Double.NaN;
    }
}
