package loomwright.switching;

import loomwright.quantity.Units;
import loomwright.worked.QuantityField;

/** Fields on relay coils that several calculators share. */
final class CoilFields {
    static final QuantityField COIL_RESISTANCE = QuantityField.of(
                    "coil-resistance",
                    "Resistance of the coil",
                    "From the data sheet, or measured between 85 and 86 with the relay pulled out. Leave it empty if you know the power.",
                    5, 5000, Units.OHM)
            .optional();

    static final QuantityField COIL_POWER = QuantityField.of(
                    "coil-power",
                    "Power of the coil at its rated voltage",
                    "From the data sheet, if it gives watts and no resistance.",
                    0.05, 20, Units.WATT, Units.MILLIWATT)
            .optional();

    static final QuantityField RATED_VOLTAGE = QuantityField.of(
                    "rated-voltage", "Rated voltage of the coil", "Printed on the relay.", 5, 30, Units.VOLT)
            .usually("12 V");

    static final QuantityField SUPPLY_VOLTAGE = QuantityField.of(
                    "supply-voltage",
                    "Supply voltage",
                    "What the battery really gives: a \"12 V\" system lies between 10.5 V and 14.6 V.",
                    6, 32, Units.VOLT)
            .usually("12.8 V");

    static final QuantityField HOURS = QuantityField.of(
                    "hours-on", "Time switched on in a day", "24 h if it is never switched off.", 0, 24, Units.HOUR, Units.MINUTE)
            .usually("24 h");

    private CoilFields() {}
}
