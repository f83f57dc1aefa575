package loomwright.worked;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The gauge numbers that there are. Between two of them there is no wire. */
final class Gauges {
    static final String WORDS = "gauge numbers are whole, from 40 AWG to 1 AWG, then 1/0, 2/0, 3/0 and 4/0";

    private static final double THICKEST = -3;
    private static final double THINNEST = 40;

    private Gauges() {}

    /** Whether it is written as a gauge, but is none. */
    static boolean isNone(Quantity quantity) {
        double number = quantity.value();
        return quantity.unit() == Units.AWG && (number != Math.floor(number) || number < THICKEST || number > THINNEST);
    }
}
