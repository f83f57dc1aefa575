package loomwright.units;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.conductor.ConductorKind;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.turned.SoldSizes;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.EntryFault;
import loomwright.worked.Outcome;

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
        if (SoldSizes.conductors(unit) == null) {
            return from.in(unit).text(DIGITS);
        }
        List<Quantity> enough = sold(from, unit);
        return enough.isEmpty() ? null : enough.get(0).text();
    }

    /** Sizes that are sold with as much copper, the thinnest first. */
    private static List<Quantity> sold(Quantity from, Unit unit) {
        List<Quantity> enough = new ArrayList<>();
        for (double size : SoldSizes.conductors(unit)) {
            Quantity each = Quantity.of(size, unit);
            if (each.base() >= from.base() * (1 - HAIR)) {
                enough.add(each);
            }
        }
        return enough;
    }

    /**
     * The same in another unit, for a field of a calculator: of the sizes with as much copper the first that it takes with the other entries, where its tables do
     * not list them all.
     *
     * @return null as well if it takes none of them, but the one that stands there
     */
    public static String taken(Calculator calculator, Map<String, String> entries, String fieldKey, Quantity from, Unit unit) {
        if (!from.dimension().equals(unit.dimension()) || SoldSizes.conductors(unit) == null) {
            return text(from, unit);
        }
        Map<String, String> tried = new HashMap<>(entries);
        if (calculator.description().field("conductor") instanceof ChoiceField kinds) {
            tried.put(kinds.key(), kind(kinds, entries.get(kinds.key()), unit));
        }
        for (Quantity each : sold(from, unit)) {
            tried.put(fieldKey, each.text());
            if (!isRefused(calculator, tried, fieldKey)) {
                return each.text();
            }
        }
        return isRefused(calculator, entries, fieldKey) ? text(from, unit) : null;
    }

    private static boolean isRefused(Calculator calculator, Map<String, String> entries, String fieldKey) {
        for (EntryFault fault : Outcome.of(calculator, entries).faults()) {
            if (fault.fieldKey().equals(fieldKey)) {
                return true;
            }
        }
        return false;
    }

    /** The kind of conductor whose table lists sizes in that unit, in the place of the one chosen; the same if it does already. */
    public static String kind(ChoiceField field, String chosen, Unit size) {
        ConductorKind kind = ConductorKind.named(chosen);
        ConductorKind other = kind == null || SoldSizes.conductors(size) == null ? null : kind.forSizesIn(size);
        return other == null || field.option(other.key()) == null ? chosen : other.key();
    }
}
