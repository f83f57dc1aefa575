package loomwright.circuit;

import java.util.List;
import loomwright.protection.BreakingCapacity;
import loomwright.protection.DeviceKind;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** What is asked for a fuse-link or breaker. */
final class ProtectionEntries {
    static final ChoiceField DEVICE = DeviceKind.field();

    static final List<Field> FIELDS = List.of(
            DEVICE,
            QuantityField.of("rating", "Rating", "The number printed on it.", 0.1, 1000, Units.AMPERE, Units.MILLIAMPERE).usually("10 A"),
            QuantityField.of(
                            "breaking-capacity", "Breaking capacity",
                            "From its data sheet, for direct current. Empty takes the figure in print for its kind, if there is one.", 1, 200_000,
                            Units.AMPERE, Units.KILOAMPERE)
                    .optional(),
            BreakingCapacity.voltageField(),
            QuantityField.of(
                            "cold-resistance", "Cold resistance", "From its data sheet, with its holder. Empty counts none.", 0, 1000,
                            Units.MILLIOHM)
                    .optional(),
            QuantityField.of(
                            "holder-rating", "Rated current of its holder", "Of the holder or panel way it sits in, from its data sheet.", 0.1, 2000,
                            Units.AMPERE)
                    .optional(),
            QuantityField.of(
                            "clearing-i2t", "Clearing integral I²t", "From its data sheet, the total until the arc is out.", 0.01, 1e9,
                            Units.AMPERE_SQUARED_SECOND)
                    .optional(),
            QuantityField.of(
                            "opening-current", "A current of its curve", "From the curve in its data sheet. Goes with the time by which it has opened.", 0.1,
                            200_000, Units.AMPERE, Units.KILOAMPERE)
                    .optional(),
            QuantityField.of(
                            "opening-time", "Time by which it has opened", "The longest time of the curve at that current; at more current it is sooner.",
                            0.001, 3600, Units.SECOND, Units.MILLISECOND)
                    .optional(),
            QuantityField.of(
                            "holding-current", "A current it holds", "From its curve, for a start and for the device before it. Goes with how long it holds it.", 0.1,
                            200_000, Units.AMPERE, Units.KILOAMPERE)
                    .optional(),
            QuantityField.of(
                            "holding-time", "Time for which it holds that", "The shortest time of the curve at that current: before it the device has not opened.",
                            0.0001, 3600, Units.SECOND, Units.MILLISECOND)
                    .optional(),
            FiguresFrom.field());

    private ProtectionEntries() {}
}
