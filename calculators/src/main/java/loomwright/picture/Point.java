package loomwright.picture;

/**
 * A point of a graph, in the units of its axes.
 *
 * @param x along the lower axis
 * @param y along the upright axis
 */
public record Point(double x, double y) {}
