package loomwright.circuit;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/**
 * The joints at one place.
 *
 * @param one the resistance of one
 * @param count how many the current passes, out and back
 * @param rating what the weakest of them may carry, or null
 */
public record Joint(Quantity one, int count, Quantity rating) implements Figures {
    public static Joint of(Part part) {
        return new Joint(part.entries().quantity("joint-resistance"), (int) Math.ceil(part.entries().quantity("joints").base() - 1e-9), part.entries().quantity("terminal-rating"));
    }

    /** The resistance of all of them. */
    public Quantity resistance() {
        return Quantity.ofBase(count * one.base(), Units.MILLIOHM);
    }

    @Override
    public double ohms() {
        return resistance().base();
    }

    @Override
    public double leastOhms() {
        return 0;
    }

    @Override
    public String inPartsList() {
        return count + " terminals or connectors";
    }

    @Override
    public String onLabel() {
        return "";
    }
}
