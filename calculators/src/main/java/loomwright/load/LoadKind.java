package loomwright.load;

import loomwright.worked.ChoiceField;
import loomwright.worked.Option;

/** How the current of a load follows the voltage of its supply. */
public enum LoadKind {
    CONSTANT_POWER("constant-power", "Holds its power: charger, USB outlet, anything with a converter"),
    RESISTIVE("resistive", "Fixed resistance: heater, coil; a filament lamp nearly"),
    CONSTANT_CURRENT("constant-current", "Holds its current: some lamp drivers");

    private final Option option;

    LoadKind(String key, String label) {
        this.option = new Option(key, label);
    }

    public static ChoiceField field() {
        Option[] options = new Option[values().length];
        for (LoadKind kind : values()) {
            options[kind.ordinal()] = kind.option;
        }
        return ChoiceField.of(
                "load-kind",
                "What the load does when the voltage changes",
                "A charger draws more when the voltage falls, a heater draws less. For motors and LED strip take the maker's largest figure.",
                options);
    }

    /** The kind chosen. */
    public static LoadKind of(Option chosen) {
        for (LoadKind kind : values()) {
            if (kind.option.equals(chosen)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no load kind " + chosen.key());
    }
}
