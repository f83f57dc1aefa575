package loomwright.proving;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** What a meter may be wrong by, and what a missing voltage says, for a whole circuit, where no single step is shown. */
public final class Readings {
    private Readings() {}

    /** What a meter may be wrong by at an expected reading. */
    public static Quantity uncertainty(Quantity expected, Quantity accuracy, Quantity digits) {
        Values values = Values.of(ReadingSymbols.ACCURACY, accuracy)
                .with(ReadingSymbols.EXPECTED, expected)
                .with(ReadingSymbols.RESOLUTION, digits);
        return ReadingSymbols.METER_UNCERTAINTY.value(values, Units.VOLT);
    }

    /** The resistance that a missing voltage comes from. */
    public static Quantity hidden(Quantity difference, Quantity current) {
        Values values = Values.of(ReadingSymbols.DIFFERENCE, difference).with(ReadingSymbols.CURRENT, current);
        return ReadingSymbols.HIDDEN_FROM_DIFFERENCE.value(values, Units.MILLIOHM);
    }

    /** The heat a resistance makes at a current. */
    public static Quantity heat(Quantity resistance, Quantity current) {
        Values values = Values.of(ReadingSymbols.HIDDEN, resistance).with(ReadingSymbols.DESIGN_CURRENT, current);
        return ReadingSymbols.HEAT.value(values, Units.WATT);
    }
}
