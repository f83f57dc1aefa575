package loomwright.protection;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the calculators of opening times ask, and what the first of them answers. */
final class TimeFields {
    static final QuantityField CURRENT = QuantityField.of(
            "current", "Current", "The overload or short-circuit current through the device.", 0.01, 100_000, Units.AMPERE,
            Units.KILOAMPERE,
            Units.MILLIAMPERE);

    private static final QuantityField TIME_LIMIT = QuantityField.of(
                    "time-limit",
                    "It must have opened within",
                    "If you enter it, it is held against the latest opening time: the longest time the conductor stands the current, for "
                            + "one.",
                    0.001, 1_000_000, Units.SECOND, Units.MILLISECOND, Units.MINUTE, Units.HOUR)
            .optional();

    static final Description TIME_CURRENT = new Description(
            "time-current",
            "Opening time of a fuse-link",
            "How soon does it open at this current, and how late?",
            List.of(
                    "The device starts at room temperature and without load.",
                    "Gates are the limits all good devices of the kind keep. One device opens somewhere between them.",
                    "No reading between gates: a device opens no later with more current, and that alone gives the bracket.",
                    "Gates of single ratings are used for those ratings only."),
            List.of(device("fuse-type", "Kind of device"), rating("rating", "Rating"), CURRENT, TIME_LIMIT),
            List.of(
                    new Output("earliest", "Earliest opening time", Units.SECOND),
                    new Output("latest", "Latest opening time", Units.SECOND),
                    new Output("share-percent", "Current as a share of the rating", Units.PERCENT)),
            List.of(new NamedFormula("share", TimeSymbols.SHARE_OF_RATING)));

    private TimeFields() {}

    static ChoiceField device(String key, String label) {
        return DeviceKind.withTimes().field(key, label, "Each kind has its own gates: do not borrow those of another.");
    }

    static QuantityField rating(String key, String label) {
        return QuantityField.of(key, label, "Printed on the device.", 0.1, 600, Units.AMPERE);
    }
}
