package loomwright.plan;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.units.Converted;
import loomwright.worked.Entries;

/** Lengths that nobody said: long enough for nearly any of its kind. All are a careful guess. */
final class Careful {
    /** The lead from the battery to the first device: the 7 in of 33 CFR 183.455(b), with a little left. */
    private static final Quantity LEAD = Quantity.of(0.15, Units.METRE);

    private static final Quantity SHORT = Quantity.of(6, Units.METRE);
    private static final Quantity LONG = Quantity.of(10, Units.METRE);
    private static final Quantity BOX = Quantity.of(2, Units.METRE);
    private static final Quantity SWITCH = Quantity.of(5, Units.METRE);
    private static final Quantity CAPACITY = Quantity.of(100, Units.AMPERE_HOUR);
    private static final Quantity SUN = Quantity.of(2, Units.HOUR);

    private Careful() {}

    static Quantity route(Entries job) {
        return inUnitsOf(job, job.choice("craft").equals("trailer") ? SHORT : LONG);
    }

    static Quantity boxRoute(Entries job) {
        return inUnitsOf(job, BOX);
    }

    static Quantity switchRoute(Entries job) {
        return inUnitsOf(job, SWITCH);
    }

    static Quantity lead(Entries job) {
        return inUnitsOf(job, LEAD);
    }

    /** In feet where cable is sold by AWG. */
    private static Quantity inUnitsOf(Entries job, Quantity length) {
        return job.choice("cable").equals("awg") ? Plain.quantity(Converted.text(length, Units.FEET)) : length;
    }

    /** What the printed ranges of inside resistance are printed for. */
    static Quantity capacity() {
        return CAPACITY;
    }

    /** A dull day of late autumn. */
    static Quantity sunHours() {
        return SUN;
    }
}
