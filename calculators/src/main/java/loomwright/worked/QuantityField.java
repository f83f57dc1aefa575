package loomwright.worked;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;

/**
 * A field that takes a number with a unit.
 *
 * @param units the units offered, the usual one first
 * @param least the smallest value taken, itself included
 * @param greatest the greatest value taken, itself included
 * @param usual see {@link Field#usual()}
 */
public record QuantityField(String key, String label, String help, List<Unit> units, Quantity least, Quantity greatest, String usual)
        implements Field {

    /** A field that must be filled. The limits are in the first unit. */
    public static QuantityField of(String key, String label, String help, double least, double greatest, Unit... units) {
        List<Unit> offered = List.of(units);
        return new QuantityField(
                key, label, help, offered, Quantity.of(least, offered.get(0)), Quantity.of(greatest, offered.get(0)), null);
    }

    /** The same field, taking {@code text} if nothing is entered. */
    public QuantityField usually(String text) {
        return new QuantityField(key, label, help, units, least, greatest, text);
    }

    /** The same field, which may be left empty. */
    public QuantityField optional() {
        return usually("");
    }

    /** Whether the quantity lies within the limits. A hair of rounding at the limit is let through. */
    boolean holds(Quantity quantity) {
        double base = quantity.base();
        double low = Math.min(least.base(), greatest.base());
        double high = Math.max(least.base(), greatest.base());
        double hair = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
        return base >= low - hair && base <= high + hair;
    }
}
