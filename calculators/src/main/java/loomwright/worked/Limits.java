package loomwright.worked;

import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;

/**
 * The smallest and the greatest value a field takes, themselves included.
 *
 * @param least the smallest
 * @param greatest the greatest, in the same unit
 */
public record Limits(Quantity least, Quantity greatest) {
    private static final double HAIR = 1e-9;

    static Limits of(double least, double greatest, Unit unit) {
        return new Limits(Quantity.of(least, unit), Quantity.of(greatest, unit));
    }

    /** Whether a unit is of the kind these limits are for. */
    boolean isFor(Unit unit) {
        return unit.dimension().equals(least.dimension());
    }

    /** Whether the quantity lies within the limits. A hair of rounding at the limit is let through. */
    public boolean hold(Quantity quantity) {
        double base = quantity.base();
        double low = Math.min(least.base(), greatest.base());
        double high = Math.max(least.base(), greatest.base());
        return base >= low - HAIR * Math.abs(low) && base <= high + HAIR * Math.abs(high);
    }

    /** The limits in words, with those of {@code unit} behind if it is another. */
    String text(Unit unit) {
        String own = least.text() + " and " + greatest.text();
        if (unit == least.unit()) {
            return own;
        }
        return own + " (" + least.in(unit).text(3) + " and " + greatest.in(unit).text(3) + ")";
    }
}
