package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.QuantityField;

/** The fields that several conductor calculators share. */
final class ConductorFields {
    /** As warm as the place that is taken where nothing is said; a conductor sized for its drop is hardly warmer than that. */
    static final Quantity USUAL_TEMPERATURE = AmpacityFields.USUAL_AMBIENT;

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
                        "40 °C in a warm place with little current, up to the temperature of its insulation with full current. Tables are printed for 20 °C.",
                        -50, 150, Units.CELSIUS, Units.FAHRENHEIT)
                .usually(USUAL_TEMPERATURE.text());
    }
}
