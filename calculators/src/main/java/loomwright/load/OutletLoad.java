package loomwright.load;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * What a 12 V outlet carries against its continuous rating, the heat of its contacts, and what it takes with nothing plugged in.
 *
 * <p>s = I ÷ I_r, P = I² × R_c, Q_0 = I_0 × t_0. Holds for a steady current; the rating is that of the part, and only ISO 4165 has one
 * in print.
 *
 * @source ISO 4165 and SAE J563 as described in the table sockets; Ohm's law
 */
public final class OutletLoad implements Calculator {
    @Override
    public Description description() {
        return OutletFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        String kind = entries.choice(OutletFields.KIND.key());
        Values values = given(entries, working, kind);
        Quantity loading = working.compute(
                "Divide the current by the rating", OutletFormulas.SHARE, values, Units.PERCENT, "A share shows at once how much is left.");
        Quantity headroom = working.compute(
                "See what is left", OutletFormulas.LEFT, values, Units.AMPERE, "Something larger may be plugged in tomorrow.");
        working.result("loading-percent", loading);
        working.result("headroom", headroom);
        values = values.with(OutletFormulas.LOADING, loading);
        if (entries.has(OutletFields.CONTACTS.key())) {
            values = contacts(entries, working, values);
        }
        working.result("use-charge", working.compute(
                "Multiply the current by the time in use", OutletFormulas.USE_CHARGE, values, Units.AMPERE_HOUR,
                "Batteries are counted in ampere-hours."));
        if (entries.quantity(OutletFields.STANDING.key()).base() > 0) {
            values = standing(entries, working, values);
        }
        OutletFindings.add(working, entries, values, kind);
        addSlips(working, entries, values);
        working.next(
                "fuse-choice", "Which fuse-link goes before it?",
                "design-current", values.of(OutletFormulas.CURRENT).text());
    }

    private static Values given(Entries entries, WorkingBuilder working, String kind) {
        Quantity current = working.convert(
                "Turn the current into amperes", entries.quantity(OutletFields.CURRENT.key()), Units.AMPERE, "Ratings are in amperes.");
        Quantity hours = working.convert(
                "Turn the time in use into hours", entries.quantity(OutletFields.HOURS.key()), Units.HOUR,
                "Batteries are counted in ampere-hours.");
        Quantity live = entries.quantity(OutletFields.LIVE.key());
        if (hours.base() > live.base() * (1 + 1e-9)) {
            throw new Refusal(
                    OutletFields.HOURS.key(),
                    "Time in use in a day is longer than the " + live.text() + " the outlet is live: make one of the two fit");
        }
        return Values.of(OutletFormulas.CURRENT, current)
                .with(OutletFormulas.RATING, rating(entries, working, kind))
                .with(OutletFormulas.HOURS, hours)
                .with(OutletFormulas.LIVE, live);
    }

    /** Only ISO 4165 has a continuous current in print; the fuse of a vehicle is no rating of its outlet. */
    private static Quantity rating(Entries entries, WorkingBuilder working, String kind) {
        if (entries.has(OutletFields.RATING.key())) {
            return entries.quantity(OutletFields.RATING.key());
        }
        if (kind.equals(OutletFields.ISO_4165)) {
            return working.lookUp(
                    "Read the largest current of ISO 4165", OutletFormulas.RATING, OutletFindings.outlet("iso-4165-current"), "value",
                    Units.AMPERE, "No rating was entered, and this kind has one in print.");
        }
        throw new Refusal(
                OutletFields.RATING.key(),
                "Continuous rating of the outlet is empty, and this kind has none in print: read it off the part or its sheet");
    }

    private static Values contacts(Entries entries, WorkingBuilder working, Values values) {
        Values with = values.with(OutletFormulas.CONTACTS, entries.quantity(OutletFields.CONTACTS.key()));
        Quantity drop = working.compute(
                "Find what the contacts lose", OutletFormulas.CONTACT_DROP, with, Units.MILLIVOLT,
                "Plug and socket only touch: that is a resistance.");
        Quantity heat = working.compute(
                "Find their heat", OutletFormulas.CONTACT_HEAT, with, Units.WATT,
                "Twice the current means four times the heat, in a place the size of a finger tip.");
        working.result("contact-drop", drop);
        working.result("contact-heat", heat);
        return with.with(OutletFormulas.DROP, drop).with(OutletFormulas.HEAT, heat);
    }

    private static Values standing(Entries entries, WorkingBuilder working, Values values) {
        Values with = values.with(OutletFormulas.STANDING, working.convert(
                "Turn the standing draw into amperes", entries.quantity(OutletFields.STANDING.key()), Units.AMPERE,
                "Batteries are counted in ampere-hours."));
        Quantity charge = working.compute(
                "Multiply the standing draw by the time live", OutletFormulas.STANDING_DAY, with, Units.AMPERE_HOUR,
                "A pilot light burns whether or not anything is plugged in.");
        working.result("standing-charge", charge);
        return with.with(OutletFormulas.STANDING_CHARGE, charge);
    }

    private static void addSlips(WorkingBuilder working, Entries entries, Values values) {
        working.slip(
                "loading-turned-over", "loading-percent", "The rating divided by the current", "Divide the current by the rating.",
                OutletFormulas.SHARE_TURNED_OVER, values);
        if (entries.has(OutletFields.FUSE.key())) {
            working.slip(
                    "fuse-for-rating", "loading-percent", "The fuse-link used in place of the rating",
                    "The fuse-link is there for the cable; the outlet has a rating of its own.", OutletFormulas.SHARE_OF_FUSE,
                    values.with(OutletFormulas.FUSE, entries.quantity(OutletFields.FUSE.key())));
        }
        if (entries.has(OutletFields.CONTACTS.key())) {
            working.slip(
                    "square-forgotten", "contact-heat", "The current not squared", "Twice the current means four times the heat.",
                    OutletFormulas.SQUARE_FORGOTTEN, values);
            working.slip(
                    "milliohms-as-ohms", "contact-heat", "Milliohms used in place of ohms", "A thousand milliohms make one ohm.",
                    OutletFormulas.MILLIOHMS_AS_OHMS, values);
        }
        if (entries.quantity(OutletFields.STANDING.key()).base() > 0) {
            working.slip(
                    "only-while-in-use", "standing-charge", "Only the time in use counted",
                    "A pilot light burns as long as the outlet is live.", OutletFormulas.ONLY_WHILE_IN_USE, values);
            working.slip(
                    "milliamperes-as-amperes", "standing-charge", "Milliamperes used in place of amperes", "A thousand milliamperes make one ampere.",
                    OutletFormulas.MILLIAMPERES_AS_AMPERES, values);
        }
    }
}
