package loomwright.load;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.Description;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the calculator of Ohm's law and power asks and answers. */
final class OhmFields {
    static final QuantityField VOLTAGE = QuantityField.of(
                    "voltage", "Voltage", "Across the part, between its two ends.", 0.001, 1000, Units.VOLT, Units.MILLIVOLT)
            .optional();

    static final QuantityField CURRENT = QuantityField.of(
                    "current", "Current", "Through the part.", 0.00001, 100_000, Units.AMPERE, Units.MILLIAMPERE)
            .optional();

    static final QuantityField RESISTANCE = QuantityField.of(
                    "resistance", "Resistance", "Of the part while it works: a cold lamp filament has far less.", 0.0001, 100_000_000,
                    Units.OHM, Units.MILLIOHM)
            .optional();

    static final QuantityField POWER = QuantityField.of(
                    "power", "Power", "What the part turns into heat, light or movement.", 0.000001, 1_000_000, Units.WATT,
                    Units.MILLIWATT, Units.KILOWATT)
            .optional();

    static final List<QuantityField> ALL = List.of(VOLTAGE, CURRENT, RESISTANCE, POWER);

    static final Description DESCRIPTION = new Description(
            "ohm-and-power",
            "Volts, amperes, ohms and watts",
            "What are the other two, if I know two of the four?",
            List.of(
                    "Steady direct current through one part.",
                    "The resistance is that of the part as it works. Chargers and other electronics have no fixed resistance."),
            List.copyOf(ALL),
            List.of(
                    new Output("voltage", "Voltage", Units.VOLT),
                    new Output("current", "Current", Units.AMPERE),
                    new Output("resistance", "Resistance", Units.OHM),
                    new Output("power", "Power", Units.WATT)),
            OhmFormulas.NAMED);

    private OhmFields() {}
}
