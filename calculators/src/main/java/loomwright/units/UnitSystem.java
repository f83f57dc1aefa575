package loomwright.units;

import java.util.List;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;

/** The two families of units that a reader chooses from, once for all pages. */
public enum UnitSystem {
    METRIC("metric"),
    AMERICAN("american");

    /** Pairs: a metric unit and the American one used in its place. */
    private static final Unit[][] PAIRS = {
        {Units.METRE, Units.FEET}, {Units.MILLIMETRE, Units.INCHES}, {Units.CENTIMETRE, Units.INCHES}, {Units.CELSIUS, Units.FAHRENHEIT},
        {Units.SQUARE_MILLIMETRE, Units.AWG}, {Units.MILLIOHM_PER_METRE, Units.OHM_PER_THOUSAND_FEET},
        {Units.OHM_PER_KILOMETRE, Units.OHM_PER_THOUSAND_FEET}, {Units.NEWTON, Units.POUND_FORCE}
    };

    private final String key;

    UnitSystem(String key) {
        this.key = key;
    }

    /** Its name in pages, files and on the device. */
    public String key() {
        return key;
    }

    /** The one of that name; metric if there is none. */
    public static UnitSystem of(String key) {
        return AMERICAN.key.equals(key) ? AMERICAN : METRIC;
    }

    /** The unit used here in the place of {@code unit}; the same one if both families use it. */
    public Unit inPlaceOf(Unit unit) {
        int from = this == AMERICAN ? 0 : 1;
        for (Unit[] pair : PAIRS) {
            if (pair[from] == unit) {
                return pair[1 - from];
            }
        }
        return unit;
    }

    /** The unit used here in the place of {@code unit}, of those that are offered; the same one if it is not among them. */
    public Unit inPlaceOf(Unit unit, List<Unit> offered) {
        Unit other = inPlaceOf(unit);
        return offered.contains(other) ? other : unit;
    }
}
