package loomwright.placing;

import java.util.List;

/**
 * A row of equal round cut-outs on a panel with upright frames behind it, in millimetres from the left edge.
 *
 * @param width width of the panel
 * @param diameter diameter of a cut-out
 * @param pitch distance between centres
 * @param count number of cut-outs
 * @param edge material wanted at the left and right edge
 * @param behind room wanted around a centre behind the panel: half the diameter of the body or nut
 * @param frames the frames behind
 */
record Row(double width, double diameter, double pitch, int count, double edge, double behind, List<Frame> frames) {
    private static final double HAIR = 1e-9;

    /**
     * An upright frame or bracket behind the panel.
     *
     * @param from its left side
     * @param to its right side
     */
    record Frame(double from, double to) {}

    double leastFirst() {
        return edge + diameter / 2;
    }

    double greatestFirst() {
        return width - edge - diameter / 2 - (count - 1) * pitch;
    }

    /** The number, from 1, of the first cut-out that meets {@code frame} if the row begins at {@code first}; 0 if none does. */
    int meets(Frame frame, double first) {
        for (int i = 0; i < count; i++) {
            double centre = first + i * pitch;
            if (centre + behind > frame.from + HAIR && centre - behind < frame.to - HAIR) {
                return i + 1;
            }
        }
        return 0;
    }

    /** Whether the whole row fits if it begins at {@code first}. */
    boolean fits(double first) {
        boolean clear = first >= leastFirst() - HAIR && first <= greatestFirst() + HAIR;
        for (Frame frame : frames) {
            clear &= meets(frame, first) == 0;
        }
        return clear;
    }

    /**
     * The place nearest to {@code wanted} where the whole row fits.
     *
     * <p>The places that fit are what is left of one stretch after others are cut out of it, so the nearest is {@code wanted} itself or one
     * of their ends.
     *
     * @return the first centre, or NaN if the row fits nowhere
     */
    double nearest(double wanted) {
        double nearest = nearer(wanted, Double.NaN, wanted);
        nearest = nearer(leastFirst(), nearest, wanted);
        nearest = nearer(greatestFirst(), nearest, wanted);
        for (Frame frame : frames) {
            for (int i = 0; i < count; i++) {
                nearest = nearer(frame.from - behind - i * pitch, nearest, wanted);
                nearest = nearer(frame.to + behind - i * pitch, nearest, wanted);
            }
        }
        return nearest;
    }

    /** Whichever of two places is nearer to {@code wanted}; a place where the row does not fit counts for nothing. */
    private double nearer(double candidate, double nearest, double wanted) {
        boolean nearer = Double.isNaN(nearest) || Math.abs(candidate - wanted) < Math.abs(nearest - wanted);
        return nearer && fits(candidate) ? candidate : nearest;
    }
}
