package loomwright.conductor;

import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Option;

/** The ways in print to work out a voltage drop. Each counts the length in its own way; all end at the same physics. */
enum DropMethod implements Choice {
    TABLE("table", "From the table of the conductor"),
    GIVEN_RESISTANCE("given-resistance", "From a resistance per length that I enter"),
    CIRCULAR_MIL("circular-mil-10.75", "Circular mils, K = 10.75, length out and back in feet"),
    CONDUCTIVITY_56("copper-56", "Conductivity 56, length one way in metres"),
    RESISTIVITY_0_0164("copper-0.0164", "Constant 0.0164, length out and back in metres");

    private static final Choices<DropMethod> CHOICES = Choices.among(values());

    private final String key;
    private final String label;

    DropMethod(String key, String label) {
        this.key = key;
        this.label = label;
    }

    static ChoiceField field() {
        return CHOICES.field(
                "method", "Way of working it out",
                "The table of the conductor is the surest. The formulas are the ones printed in handbooks; each hides a temperature.");
    }

    static DropMethod of(Option chosen) {
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
