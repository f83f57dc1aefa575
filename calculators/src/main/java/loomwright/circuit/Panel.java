package loomwright.circuit;

import loomwright.quantity.Quantity;

/**
 * A fuse panel.
 *
 * @param limit the current it may carry in all
 * @param presentLoad the current of what is on it already and not entered as a load of its own
 */
public record Panel(Quantity limit, Quantity presentLoad) {
    public static Panel of(Part part) {
        return new Panel(part.entries().quantity("panel-limit"), part.entries().quantity("present-load"));
    }
}
