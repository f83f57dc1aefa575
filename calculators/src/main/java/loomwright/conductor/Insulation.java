package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Option;

/** The temperature ratings of insulation that the ampacity tables have columns for. */
public enum Insulation {
    T60(60),
    T75(75),
    T80(80),
    T90(90),
    T105(105),
    T125(125),
    T150(150),
    T200(200);

    private final int degrees;

    Insulation(int degrees) {
        this.degrees = degrees;
    }

    /** The field {@code insulation-temperature}; the lowest rating is taken if none is chosen. */
    public static ChoiceField field(Insulation... offered) {
        Option[] options = new Option[offered.length];
        for (int i = 0; i < offered.length; i++) {
            options[i] = offered[i].option();
        }
        return ChoiceField.of(
                "insulation-temperature",
                "Temperature rating of the insulation",
                "Printed on the cable or on its reel. If you cannot find it, take 60 °C.",
                options);
    }

    /** The rating chosen in {@link #field}. */
    public static Insulation of(Option chosen) {
        for (Insulation insulation : values()) {
            if (insulation.option().equals(chosen)) {
                return insulation;
            }
        }
        throw new IllegalArgumentException("no insulation " + chosen.key());
    }

    /** The column of this rating in the ampacity tables, such as {@code t105}. */
    public String column() {
        return "t" + degrees;
    }

    /** The temperature it is rated for. */
    public Quantity rating() {
        return Quantity.of(degrees, Units.CELSIUS);
    }

    private Option option() {
        return new Option(column(), degrees + "\u00a0°C");
    }
}
