package loomwright.switching;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/** The resistance of a coil: as entered, or from its power at its rated voltage. */
final class CoilResistance {
    private CoilResistance() {}

    /**
     * The resistance of the coil.
     *
     * @throws Refusal if neither resistance nor power was entered, or both
     */
    static Quantity of(Entries entries, WorkingBuilder working) {
        boolean resistance = entries.has(CoilFields.COIL_RESISTANCE.key());
        boolean power = entries.has(CoilFields.COIL_POWER.key());
        if (resistance == power) {
            throw new Refusal(
                    CoilFields.COIL_RESISTANCE.key(),
                    resistance
                            ? "Resistance of the coil and Power of the coil are both entered: one is enough, so empty the other"
                            : "Resistance of the coil is empty, and so is its power: enter one of the two from the data sheet");
        }
        if (resistance) {
            return entries.quantity(CoilFields.COIL_RESISTANCE.key());
        }
        Quantity watts = working.convert(
                "Turn the power into watts", entries.quantity(CoilFields.COIL_POWER.key()), Units.WATT, "Watts go with volts and ohms.");
        Values values = Values.of(SwitchSymbols.RATED_VOLTAGE, entries.quantity(CoilFields.RATED_VOLTAGE.key()))
                .with(SwitchSymbols.RATED_POWER, watts);
        return working.compute(
                "Find the resistance of the coil from its rated power", CoilFormulas.RESISTANCE_FROM_POWER, values, Units.OHM,
                "The coil is a length of thin wire: its resistance stays while the voltage changes.");
    }
}
