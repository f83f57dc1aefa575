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
                    .optional());

    private ProtectionEntries() {}
}
