package loomwright.plan;

import java.util.Map;
import loomwright.circuit.Load;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/**
 * One load with its run, as far as the answers and the careful values say it.
 *
 * @param item the line it was answered in
 * @param name what it is called
 * @param texts what is entered for it as a part of a circuit
 * @param lasting whether it counts as on for three hours and more
 * @param route the way its cable runs; one way
 * @param sheathed whether its conductors lie in one sheath
 * @param load it as a part of a circuit understands it
 */
record Need(
        int item, ItemKind kind, String name, Map<String, String> texts, boolean lasting, Quantity route, Situated place, Beside beside,
        boolean sheathed, Load load) {
    static final Quantity LOWEST = Quantity.of(10.5, Units.VOLT);
    static final Quantity HIGHEST = Quantity.of(14.6, Units.VOLT);

    static Need of(
            int item, ItemKind kind, String name, Map<String, String> texts, boolean lasting, Quantity route, Situated place, Beside beside, boolean sheathed) {
        return new Need(item, kind, name, texts, lasting, route, place, beside, sheathed, Load.of(part("load", name, "", texts)));
    }

    /** It as a part of a circuit. */
    Part part(String id, String fedBy) {
        return part(id, name, fedBy, texts);
    }

    private static Part part(String id, String name, String fedBy, Map<String, String> texts) {
        return Part.read(id, PartKind.LOAD, name, fedBy, "", "", texts).partOrRefuse();
    }

    /** The most it draws for longer than a moment: a heater at the highest voltage, all else at the lowest. */
    double amperes() {
        return Math.max(load.current(LOWEST.base()).base(), load.current(HIGHEST.base()).base());
    }

    /** What it draws at least when it draws most: a heater behind a run that loses all it may draws less. */
    double keptAmperes() {
        boolean resistive = load.siemens() > 0;
        return load.current(resistive ? HIGHEST.base() - allowedVolts() : LOWEST.base()).base();
    }

    /** What may be lost on the way to it, in volts of 12. */
    double allowedVolts() {
        return 12 * load().allowance().quantity("allowance").base();
    }

    /** The largest device that its data sheet allows; null if nobody said. */
    Quantity mostDevice() {
        return load().outletRating();
    }
}
