package loomwright.worked;

import java.util.List;

/**
 * A field that takes one of a few choices.
 *
 * @param options the choices, in the order shown
 * @param usual see {@link Field#usual()}
 */
public record ChoiceField(String key, String label, String help, List<Option> options, String usual) implements Field {

    /** A field with the first option taken if none is chosen. */
    public static ChoiceField of(String key, String label, String help, Option... options) {
        return new ChoiceField(key, label, help, List.of(options), options[0].key());
    }

    /** The same field, with another option taken if none is chosen. */
    public ChoiceField usually(String optionKey) {
        return new ChoiceField(key, label, help, options, optionKey);
    }

    /** The option of that key, or null. */
    public Option option(String optionKey) {
        for (Option option : options) {
            if (option.key().equals(optionKey)) {
                return option;
            }
        }
        return null;
    }
}
