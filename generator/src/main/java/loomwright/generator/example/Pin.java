package loomwright.generator.example;

import loomwright.generator.problem.Span;
import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Output;

/**
 * A figure from elsewhere that a result of an example is held against.
 *
 * @param at where it stands
 * @param output the result
 * @param computed what the calculator gives
 * @param expect the figure from elsewhere
 * @param expectText the figure as it was printed, trailing zeros kept
 * @param tolerance how far apart they may be
 * @param toleranceText the same as written
 * @param kind how the figure was come by
 * @param source where it comes from
 * @param arithmetic the working by hand, or an empty text
 */
public record Pin(
        Span at,
        Output output,
        Quantity computed,
        Quantity expect,
        String expectText,
        Quantity tolerance,
        String toleranceText,
        PinKind kind,
        Source source,
        String arithmetic) {
    /** Room for the last bit of a double, so that a figure exactly at the limit passes. */
    private static final double HAIR = 1e-9;

    /** How far the computed result is from the figure, in the unit of the figure. */
    public Quantity difference() {
        double apart = Math.abs(computed.in(expect.unit()).value() - expect.value());
        return Quantity.of(apart, expect.unit());
    }

    public boolean holds() {
        return isNear(computed);
    }

    /** Whether a figure is within the tolerance. */
    boolean isNear(Quantity figure) {
        double allowed = Math.abs(tolerance.in(expect.unit()).value());
        double apart = Math.abs(figure.in(expect.unit()).value() - expect.value());
        return apart <= allowed + HAIR * Math.max(1e-9, Math.abs(expect.value()));
    }
}
