package loomwright.worked;

import java.util.HashMap;
import java.util.Map;
import loomwright.quantity.Quantity;

/** What the reader entered, read and checked against the fields. */
public final class Entries {
    private final Map<String, Quantity> quantities = new HashMap<>();
    private final Map<String, Option> options = new HashMap<>();

    Entries() {}

    void put(String key, Quantity quantity) {
        quantities.put(key, quantity);
    }

    void put(String key, Option option) {
        options.put(key, option);
    }

    /** The quantity entered, or null if the field was left empty. */
    public Quantity quantity(String key) {
        return quantities.get(key);
    }

    /** Whether the field holds a quantity. */
    public boolean has(String key) {
        return quantities.containsKey(key);
    }

    /** The key of the option chosen. */
    public String choice(String key) {
        return options.get(key).key();
    }

    /** The option chosen, or null if the field is not a choice. */
    public Option option(String key) {
        return options.get(key);
    }

    /**
     * The quantity entered in a field that this calculation cannot do without.
     *
     * @throws Refusal if it was left empty
     */
    public Quantity required(QuantityField field) {
        Quantity quantity = quantities.get(field.key());
        if (quantity == null) {
            throw new Refusal(field.key(), field.label() + " is needed here: enter a number");
        }
        return quantity;
    }
}
