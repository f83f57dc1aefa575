package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Entries;

/**
 * What decides the ampacity of a conductor besides its size.
 *
 * @param insulation the rating of its insulation
 * @param engineSpace whether it runs through an engine space
 * @param ambient the temperature around it, or null if the reader left it to the table
 * @param together how many loaded conductors lie together, itself included
 * @param voltage the nominal voltage of the circuit
 */
public record Surroundings(Insulation insulation, boolean engineSpace, Quantity ambient, int together, Quantity voltage) {
    /** The surroundings entered, for a circuit of that nominal voltage. */
    public static Surroundings of(Entries entries, Quantity voltage) {
        return new Surroundings(
                Insulation.of(entries.option("insulation-temperature")),
                entries.choice("engine-space").equals("yes"),
                entries.quantity("ambient"),
                (int) Math.ceil(entries.quantity("conductors-together").base() - 1e-9),
                voltage);
    }

    /** Whether it is warmer around the conductor than {@code celsius}. */
    boolean warmerThan(double celsius) {
        return ambient != null && ambient.in(Units.CELSIUS).value() > celsius + 1e-9;
    }
}
