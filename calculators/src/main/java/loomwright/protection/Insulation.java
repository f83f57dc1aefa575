package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Option;

/** The temperature ratings of insulation that Table 5 of 33 CFR 183.425 has a column for. */
enum Insulation {
    T60(60),
    T75(75),
    T80(80),
    T90(90),
    T105(105),
    T125(125),
    T200(200);

    private final Quantity temperature;
    private final Option option;

    Insulation(int celsius) {
        this.temperature = Quantity.of(celsius, Units.CELSIUS);
        this.option = new Option("t" + celsius, temperature.text());
    }

    static ChoiceField field() {
        Option[] options = new Option[values().length];
        for (Insulation insulation : values()) {
            options[insulation.ordinal()] = insulation.option;
        }
        return ChoiceField.of(
                "insulation-temperature",
                "Temperature rating of the insulation",
                "Printed on the cable. If you cannot find it, take the lowest.",
                options);
    }

    static Insulation of(Option chosen) {
        for (Insulation insulation : values()) {
            if (insulation.option.equals(chosen)) {
                return insulation;
            }
        }
        throw new IllegalArgumentException("no insulation " + chosen.key());
    }

    Quantity temperature() {
        return temperature;
    }

    /** Its column of Table 5. */
    String column() {
        return option.key();
    }

    /** The next rating up, or null. */
    Insulation hotter() {
        return this == T200 ? null : values()[ordinal() + 1];
    }

    /** The next rating down, or null. */
    Insulation colder() {
        return this == T60 ? null : values()[ordinal() - 1];
    }
}
