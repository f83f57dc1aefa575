package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Option;

/** The temperature ratings of insulation that the ampacity tables have columns for. */
public enum Insulation implements Choice {
    T60(60),
    T75(75),
    T80(80),
    T90(90),
    T105(105),
    T125(125),
    T150(150),
    T200(200);

    private static final Choices<Insulation> CHOICES = Choices.among(values());

    private final int degrees;

    Insulation(int degrees) {
        this.degrees = degrees;
    }

    /** The field {@code insulation-temperature}; the lowest rating is taken if none is chosen. */
    public static ChoiceField field(Insulation... offered) {
        return Choices.among(offered).field(
                "insulation-temperature", "Temperature rating of the insulation",
                "Printed on the cable or on its reel. If you cannot find it, take 60 °C.");
    }

    /** The rating chosen in {@link #field}. */
    public static Insulation of(Option chosen) {
        return CHOICES.of(chosen);
    }

    /** The column of this rating in the ampacity tables, such as {@code t105}. */
    public String column() {
        return "t" + degrees;
    }

    /** The temperature it is rated for. */
    public Quantity rating() {
        return Quantity.of(degrees, Units.CELSIUS);
    }

    @Override
    public String key() {
        return column();
    }

    @Override
    public String label() {
        return degrees + "\u00a0°C";
    }
}
