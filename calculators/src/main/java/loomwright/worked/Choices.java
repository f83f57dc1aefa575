package loomwright.worked;

import java.util.List;

/**
 * A closed list of things to choose from: the field that offers them, and the way back from what was chosen.
 *
 * @param <C> what is chosen
 */
public final class Choices<C extends Choice> {
    private final List<C> all;

    private Choices(List<C> all) {
        this.all = all;
    }

    /** The list, in the order shown; mostly the values of an enum. */
    public static <C extends Choice> Choices<C> among(C[] all) {
        return new Choices<>(List.of(all));
    }

    public List<C> all() {
        return all;
    }

    /** The field that asks for one of them; the first is taken if none is chosen. What is in {@code more} stands behind them. */
    public ChoiceField field(String key, String label, String help, Option... more) {
        Option[] options = new Option[all.size() + more.length];
        for (int i = 0; i < all.size(); i++) {
            options[i] = all.get(i).option();
        }
        System.arraycopy(more, 0, options, all.size(), more.length);
        return ChoiceField.of(key, label, help, options);
    }

    /** What has that key, or null. */
    public C named(String key) {
        for (C each : all) {
            if (each.key().equals(key)) {
                return each;
            }
        }
        return null;
    }

    /** What was chosen in {@link #field}, or null if it is one of those that stand behind. */
    public C find(Option chosen) {
        return named(chosen.key());
    }

    /**
     * What was chosen in {@link #field}.
     *
     * @throws IllegalArgumentException if it is none of these
     */
    public C of(Option chosen) {
        C found = named(chosen.key());
        if (found == null) {
            throw new IllegalArgumentException("no choice " + chosen.key());
        }
        return found;
    }
}
