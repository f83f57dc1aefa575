package loomwright.worked;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import loomwright.quantity.Quantity;

/** What the reader entered, read and checked against the fields. */
public final class Entries {
    private final Map<String, Quantity> quantities = new HashMap<>();
    private final Map<String, Option> options = new HashMap<>();
    private final Set<String> assumed = new HashSet<>();
    private final Set<String> asked = new HashSet<>();

    Entries() {}

    void put(String key, Quantity quantity) {
        quantities.put(key, quantity);
    }

    void put(String key, Option option) {
        options.put(key, option);
    }

    /** Notes that nobody said what a field holds: its usual value was taken. */
    void assume(String key) {
        assumed.add(key);
    }

    /** Whether a field holds its usual value because nobody entered one. */
    public boolean isAssumed(String key) {
        return assumed.contains(key);
    }

    /**
     * Whether the working has asked for a field. One that it never asked for does not belong to the way chosen: another kind of conductor, a
     * stretch that is not there.
     */
    public boolean isAsked(String key) {
        return asked.contains(key);
    }

    /** The quantity entered, or null if the field was left empty. */
    public Quantity quantity(String key) {
        asked.add(key);
        return quantities.get(key);
    }

    /** Whether the field holds a quantity. */
    public boolean has(String key) {
        asked.add(key);
        return quantities.containsKey(key);
    }

    /** The key of the option chosen. */
    public String choice(String key) {
        asked.add(key);
        return options.get(key).key();
    }

    /** The option chosen, or null if the field is not a choice. */
    public Option option(String key) {
        asked.add(key);
        return options.get(key);
    }

    /**
     * The quantity entered in a field that this calculation cannot do without.
     *
     * @throws Refusal if it was left empty
     */
    public Quantity required(QuantityField field) {
        Quantity quantity = quantity(field.key());
        if (quantity == null) {
            throw new Refusal(field.key(), field.label() + " is needed here: enter a number");
        }
        return quantity;
    }
}
