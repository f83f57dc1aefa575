package loomwright.conductor;

import loomwright.quantity.Units;
import loomwright.worked.QuantityField;

/** The fields that several conductor calculators share. */
final class ConductorFields {
    private ConductorFields() {}

    static QuantityField size() {
        return QuantityField.of(
                "size",
                "Size of conductor",
                "The number printed on the cable, such as 2.5 mm² or 14 AWG.",
                0.05, 150, Units.SQUARE_MILLIMETRE, Units.AWG, Units.CIRCULAR_MIL);
    }

    static QuantityField temperature() {
        return QuantityField.of(
                        "temperature",
                        "Temperature of the conductor",
                        "20 °C for a cool cable with little current. A loaded cable in a warm place may be at 40 °C to 60 °C.",
                        -50, 150, Units.CELSIUS, Units.FAHRENHEIT)
                .usually("20 °C");
    }
}
