package loomwright.circuit;

import loomwright.quantity.Quantity;

/**
 * An isolating switch.
 *
 * @param continuousCurrent what it may carry all the time
 * @param resistance the resistance of its closed contact
 */
public record Isolator(Quantity continuousCurrent, Quantity resistance) implements Figures {
    public static Isolator of(Part part) {
        return new Isolator(part.entries().quantity("continuous-current"), part.entries().quantity("contact-resistance"));
    }

    @Override
    public double ohms() {
        return resistance.base();
    }

    @Override
    public double leastOhms() {
        return 0;
    }

    @Override
    public String inPartsList() {
        return "isolating switch for " + continuousCurrent.text();
    }

    @Override
    public String onLabel() {
        return "";
    }
}
