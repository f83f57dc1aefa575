package loomwright.worked;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Unit;

/**
 * A field that takes a number with a unit.
 *
 * @param units the units offered, the usual one first
 * @param limits what it takes, one for each kind of quantity; the first is in the usual unit
 * @param usual see {@link Field#usual()}
 */
public record QuantityField(String key, String label, String help, List<Unit> units, List<Limits> limits, String usual) implements Field {

    /** A field that must be filled. The limits are in the first unit. */
    public static QuantityField of(String key, String label, String help, double least, double greatest, Unit... units) {
        List<Unit> offered = List.of(units);
        return new QuantityField(key, label, help, offered, List.of(Limits.of(least, greatest, offered.get(0))), null);
    }

    /** The same field, which also takes another kind of quantity, such as a diameter where an area is asked for. */
    public QuantityField orElse(double least, double greatest, Unit... more) {
        List<Unit> offered = new ArrayList<>(units);
        offered.addAll(List.of(more));
        List<Limits> all = new ArrayList<>(limits);
        all.add(Limits.of(least, greatest, more[0]));
        return new QuantityField(key, label, help, List.copyOf(offered), List.copyOf(all), usual);
    }

    /** The same field, taking {@code text} if nothing is entered. */
    public QuantityField usually(String text) {
        return new QuantityField(key, label, help, units, limits, text);
    }

    /** The same field under another key, where its own is taken. */
    public QuantityField keyed(String otherKey) {
        return new QuantityField(otherKey, label, help, units, limits, usual);
    }

    /** The same field, offering one of its units first. */
    public QuantityField beginning(Unit unit) {
        List<Unit> offered = new ArrayList<>(units);
        offered.remove(unit);
        offered.add(0, unit);
        return new QuantityField(key, label, help, List.copyOf(offered), limits, usual);
    }

    /** The same field, which may be left empty. */
    public QuantityField optional() {
        return usually("");
    }

    /** The limits for quantities in {@code unit}; null if the field takes no such kind. */
    public Limits limits(Unit unit) {
        for (Limits some : limits) {
            if (some.isFor(unit)) {
                return some;
            }
        }
        return null;
    }
}
