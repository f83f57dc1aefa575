package loomwright.picture;

import java.util.List;

/**
 * An axis of a graph.
 *
 * @param title what it measures, with the unit, such as {@code Route length (m)}
 * @param from the value at its beginning
 * @param to the value at its end
 * @param logarithmic whether equal steps stand for equal ratios
 * @param most into how many parts its numbers may cut it
 */
public record Axis(String title, double from, double to, boolean logarithmic, int most) {
    private static final int PARTS = 6;

    /**
     * Checks the span.
     *
     * @throws IllegalArgumentException if it is empty, endless, or has no logarithm
     */
    public Axis {
        if (!(to - from > 0) || Double.isInfinite(to - from)) {
            throw new IllegalArgumentException("the axis \u201c" + title + "\u201d must end above its beginning");
        }
        if (logarithmic && !(from > 0)) {
            throw new IllegalArgumentException("the logarithmic axis \u201c" + title + "\u201d must begin above zero");
        }
    }

    public static Axis linear(String title, double from, double to) {
        return new Axis(title, from, to, false, PARTS);
    }

    /** From zero to the first round number that is not below {@code largest}. */
    public static Axis fromZero(String title, double largest) {
        double step = Ticks.step(largest, PARTS);
        return linear(title, 0, step * Math.ceil(largest / step - 1e-9));
    }

    public static Axis logarithmic(String title, double from, double to) {
        return new Axis(title, from, to, true, PARTS);
    }

    /** An axis without numbers, for a sketch. */
    public static Axis bare(String title, double from, double to) {
        return new Axis(title, from, to, false, 0);
    }

    /** The same axis, cut by its numbers into at most {@code parts} parts. */
    public Axis parts(int parts) {
        return new Axis(title, from, to, logarithmic, parts);
    }

    /** Its numbers; none if it is a sketch. */
    public List<Tick> ticks() {
        if (most == 0) {
            return List.of();
        }
        return logarithmic ? Ticks.logarithmic(from, to) : Ticks.linear(from, to, most);
    }

    /** Values to draw a curve through: the ends, the numbers, {@code between} steps from each to the next, and what else is named. */
    public List<Double> samples(int between, double... also) {
        Rising samples = new Rising();
        double before = from;
        samples.add(from);
        for (Tick tick : ticks()) {
            addSteps(samples, before, tick.value(), between);
            before = tick.value();
        }
        addSteps(samples, before, to, between);
        for (double value : also) {
            samples.add(value);
        }
        return samples.list();
    }

    private static void addSteps(Rising samples, double from, double to, int steps) {
        for (int i = 1; i <= steps && to > from; i++) {
            samples.add(i == steps ? to : from + (to - from) * i / steps);
        }
    }

    /** Where {@code value} stands, when the axis runs from {@code start} to {@code end} on the canvas. */
    public double place(double value, double start, double end) {
        double share = logarithmic ? Math.log(value / from) / Math.log(to / from) : (value - from) / (to - from);
        return start + share * (end - start);
    }
}
