package loomwright.conductor;

import java.util.List;
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
    /** The keys of the entries that say so. */
    public static final List<String> KEYS = List.of("insulation-temperature", "engine-space", "ambient", "conductors-together");

    private static final double BASE = 30;
    private static final double ENGINE_SPACE = 50;

    /** The surroundings entered. */
    public static Surroundings of(Entries entries) {
        return of(entries, Quantity.of(12, Units.VOLT));
    }

    /** What a careful person takes where nobody said anything of the place: two conductors in a closed vehicle in summer. */
    public static Surroundings unsaid(Insulation insulation) {
        return new Surroundings(insulation, false, AmpacityFields.USUAL_AMBIENT, 2, Quantity.of(12, Units.VOLT));
    }

    /** The surroundings entered, for a circuit of that nominal voltage. */
    public static Surroundings of(Entries entries, Quantity voltage) {
        return new Surroundings(
                Insulation.of(entries.option("insulation-temperature")),
                entries.choice("engine-space").equals("yes"),
                entries.quantity("ambient"),
                (int) Math.ceil(entries.quantity("conductors-together").base() - 1e-9),
                voltage);
    }

    /** How warm it is around the conductor, an engine space included. */
    public Quantity warmth() {
        return Quantity.of(celsius(), Units.CELSIUS);
    }

    /** How warm it is around the conductor, in °C: an engine space counts as 50 °C at least, and nothing said as 30 °C. */
    double celsius() {
        double entered = ambient == null ? BASE : ambient.in(Units.CELSIUS).value();
        return engineSpace ? Math.max(ENGINE_SPACE, entered) : entered;
    }

    /** Whether there is nothing left for the conductor's own heat. */
    boolean isAsWarmAsInsulation() {
        return celsius() >= insulation.rating().value() - 1e-9;
    }

    /** What a careful person takes where nothing is known, as far as it was taken here; empty if none of it was. */
    String assumed() {
        String lowest = insulation == Insulation.T60 ? "insulation for " + insulation.rating().text() : "";
        boolean warm = !engineSpace && ambient != null && ambient.text().equals(AmpacityFields.USUAL_AMBIENT.text());
        return lowest + (lowest.isEmpty() || !warm ? "" : " and ") + (warm ? ambient.text() + " around it" : "");
    }

    /** Whether it is warmer around the conductor than {@code celsius}. */
    boolean warmerThan(double celsius) {
        return ambient != null && ambient.in(Units.CELSIUS).value() > celsius + 1e-9;
    }
}
