package loomwright.circuit;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/**
 * The joints at one place.
 *
 * @param one the resistance of one
 * @param count how many the current passes, out and back
 */
public record Joint(Quantity one, int count) {
    public static Joint of(Part part) {
        return new Joint(part.entries().quantity("joint-resistance"), (int) Math.ceil(part.entries().quantity("joints").base() - 1e-9));
    }

    /** The resistance of all of them. */
    public Quantity resistance() {
        return Quantity.ofBase(count * one.base(), Units.MILLIOHM);
    }
}
