package loomwright.load;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the calculator of an outlet asks and answers. */
final class OutletFields {
    static final String ISO_4165 = "iso-4165";
    static final String LIGHTER = "lighter";
    static final String USB = "usb";

    static final ChoiceField KIND = ChoiceField.of(
            "kind", "Kind of outlet", "Look at the hole: about 12 mm across or about 21 mm?",
            new Option(ISO_4165, "ISO 4165, the small double-pole kind"),
            new Option(LIGHTER, "SAE J563, the lighter type"),
            new Option(USB, "USB outlet, at its 12 V side"),
            new Option("other", "another kind"));

    static final QuantityField CURRENT = QuantityField.of(
            "current", "Current asked at 12 V", "What all that is plugged in takes from the 12 V side, at the lowest voltage.", 0.01, 60,
            Units.AMPERE, Units.MILLIAMPERE);

    static final QuantityField RATING = QuantityField.of(
                    "rating", "Continuous rating of the outlet",
                    "Printed on the part or on its sheet. Not a peak, and not the fuse of the vehicle. Empty for ISO 4165: 12 A is taken.",
                    0.1, 60, Units.AMPERE)
            .optional();

    static final QuantityField HOURS = QuantityField.of(
                    "hours", "Time in use in a day", "With something plugged in that takes this current.", 0.01, 24, Units.HOUR, Units.MINUTE)
            .usually("3 h");

    static final QuantityField LIVE = QuantityField.of(
                    "live-hours", "Time live in a day", "24 h if no switch cuts it off.", 0.01, 24, Units.HOUR)
            .usually("24 h");

    static final QuantityField STANDING = QuantityField.of(
                    "standing-current", "Draw with nothing plugged in",
                    "Pilot light, button and idle converter together, from the sheet or measured. 0 if there is none.", 0, 2000,
                    Units.MILLIAMPERE, Units.AMPERE)
            .usually("0 mA");

    static final QuantityField CONTACTS = QuantityField.of(
                    "contact-resistance", "Resistance of the contacts, both together",
                    "Measured with the load on: the millivolts lost between socket and plug, divided by the amperes.", 0.01, 1000,
                    Units.MILLIOHM)
            .optional();

    static final QuantityField FUSE = QuantityField.of(
                    "fuse-rating", "Rating of the fuse-link before it", "The one nearest to the outlet.", 0.5, 60, Units.AMPERE)
            .optional();

    static final Description DESCRIPTION = new Description(
            "outlet-load",
            "Load of an outlet",
            "Can this outlet carry what I plug into it, and what does it take when nothing is plugged in?",
            List.of(
                    "The current is steady while it is in use.",
                    "The rating holds for the warmth its maker had in mind. Behind a panel in the sun it is less.",
                    "The contacts keep their resistance. Dirty or loose ones get worse as they warm."),
            List.of(CURRENT, KIND, RATING, HOURS, LIVE, STANDING, CONTACTS, FUSE),
            List.of(
                    new Output("loading-percent", "Share of the continuous rating", Units.PERCENT),
                    new Output("headroom", "What is left of the rating", Units.AMPERE),
                    new Output("contact-drop", "Voltage lost in the contacts", Units.MILLIVOLT),
                    new Output("contact-heat", "Heat in the contacts", Units.WATT),
                    new Output("use-charge", "Taken by the load in a day", Units.AMPERE_HOUR),
                    new Output("standing-charge", "Standing draw in a day", Units.AMPERE_HOUR)),
            OutletFormulas.NAMED);

    private OutletFields() {}
}
