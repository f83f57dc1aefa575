package loomwright.conductor;

import loomwright.worked.ChoiceField;
import loomwright.worked.Option;

/** The ways in print to work out a voltage drop. Each counts the length in its own way; all end at the same physics. */
enum DropMethod {
    TABLE("table", "From the table of the conductor"),
    GIVEN_RESISTANCE("given-resistance", "From a resistance per length that I enter"),
    CIRCULAR_MIL("circular-mil-10.75", "Circular mils, K = 10.75, length out and back in feet"),
    CONDUCTIVITY_56("copper-56", "Conductivity 56, length one way in metres"),
    RESISTIVITY_0_0164("copper-0.0164", "Constant 0.0164, length out and back in metres");

    private final Option option;

    DropMethod(String key, String label) {
        this.option = new Option(key, label);
    }

    static ChoiceField field() {
        Option[] options = new Option[values().length];
        for (DropMethod method : values()) {
            options[method.ordinal()] = method.option;
        }
        return ChoiceField.of(
                "method",
                "Way of working it out",
                "The table of the conductor is the surest. The formulas are the ones printed in handbooks; each hides a temperature.",
                options);
    }

    static DropMethod of(Option chosen) {
        for (DropMethod method : values()) {
            if (method.option.equals(chosen)) {
                return method;
            }
        }
        throw new IllegalArgumentException("no method " + chosen.key());
    }
}
