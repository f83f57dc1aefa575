package loomwright.supply;

import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.QuantityField;

/** Fields that several calculators of this package ask for, and the source of a limit that the reader entered. */
final class SupplyFields {
    static final QuantityField SYSTEM_VOLTAGE = QuantityField.of(
                    "system-voltage",
                    "System voltage",
                    "The voltage that watt-hours are divided by to get ampere-hours: 12 V by name, or the nominal voltage of your battery.",
                    1, 60, Units.VOLT)
            .usually("12 V");

    static final QuantityField CAPACITY =
            QuantityField.of("capacity", "Battery capacity", "The ampere-hours printed on the battery.", 0.1, 100_000, Units.AMPERE_HOUR);

    static final QuantityField LOAD_CURRENT = QuantityField.of(
            "load-current", "Current drawn", "What all loads together draw from the battery.", 0.001, 1000, Units.AMPERE, Units.MILLIAMPERE);

    private SupplyFields() {}

    static Source entered() {
        return Source.of(Document.COMPUTED, "held against the limit you entered");
    }

    static Source computed() {
        return Source.of(Document.COMPUTED, "");
    }
}
