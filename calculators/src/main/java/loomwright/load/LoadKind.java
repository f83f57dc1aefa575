package loomwright.load;

import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Option;

/** How the current of a load follows the voltage of its supply. */
public enum LoadKind implements Choice {
    CONSTANT_POWER("constant-power", "Holds its power: charger, USB outlet, anything with a converter"),
    RESISTIVE("resistive", "Fixed resistance: heater, coil; a filament lamp nearly"),
    CONSTANT_CURRENT("constant-current", "Holds its current: some lamp drivers");

    private static final Choices<LoadKind> CHOICES = Choices.among(values());

    private final String key;
    private final String label;

    LoadKind(String key, String label) {
        this.key = key;
        this.label = label;
    }

    public static ChoiceField field() {
        return CHOICES.field(
                "load-kind", "What the load does when the voltage changes",
                "A charger draws more when the voltage falls, a heater draws less. For motors and LED strip take the maker's largest figure.");
    }

    /** The kind chosen. */
    public static LoadKind of(Option chosen) {
        return CHOICES.of(chosen);
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }
}
