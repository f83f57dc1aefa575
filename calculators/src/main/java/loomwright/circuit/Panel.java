package loomwright.circuit;

import loomwright.quantity.Quantity;

/**
 * A fuse panel.
 *
 * @param limit the current it may carry in all
 * @param presentLoad the current of what is on it already and not entered as a load of its own
 */
public record Panel(Quantity limit, Quantity presentLoad) implements Figures {
    public static Panel of(Part part) {
        return new Panel(part.entries().quantity("panel-limit"), part.entries().quantity("present-load"));
    }

    @Override
    public double ohms() {
        return 0;
    }

    @Override
    public double leastOhms() {
        return 0;
    }

    @Override
    public String inPartsList() {
        return "fuse panel for " + limit.text();
    }

    @Override
    public String onLabel() {
        return limit.text() + " in all";
    }
}
