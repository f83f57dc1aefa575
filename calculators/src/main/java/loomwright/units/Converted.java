package loomwright.units;

import java.util.List;
import loomwright.conductor.ConductorKind;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.turned.SoldSizes;
import loomwright.worked.ChoiceField;

/** A figure brought to another unit as a person would write it: to three digits, and a size of conductor to one that is sold. */
public final class Converted {
    private static final int DIGITS = 3;
    private static final double HAIR = 1e-6;

    private Converted() {}

    /**
     * The same in another unit, as text. In the place of a size of conductor stands the first that is sold with as much copper.
     *
     * @return null if the units measure different things, or no size is so thick
     */
    public static String text(Quantity from, Unit unit) {
        if (!from.dimension().equals(unit.dimension())) {
            return null;
        }
        List<Double> sold = SoldSizes.conductors(unit);
        if (sold == null) {
            return from.in(unit).text(DIGITS);
        }
        Quantity found = null;
        for (double size : sold) {
            Quantity each = Quantity.of(size, unit);
            boolean enough = each.base() >= from.base() * (1 - HAIR);
            found = enough && (found == null || each.base() < found.base()) ? each : found;
        }
        return found == null ? null : found.text();
    }

    /** The kind of conductor whose table lists sizes in that unit, in the place of the one chosen; the same if it does already. */
    public static String kind(ChoiceField field, String chosen, Unit size) {
        ConductorKind kind = ConductorKind.named(chosen);
        ConductorKind other = kind == null || SoldSizes.conductors(size) == null ? null : kind.forSizesIn(size);
        return other == null || field.option(other.key()) == null ? chosen : other.key();
    }
}
