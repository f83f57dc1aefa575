package loomwright.turned;

import java.util.Map;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import loomwright.worked.QuantityField;
import loomwright.worked.Working;

/**
 * A calculator with what was typed, asked again and again with another figure in the field that is the unknown.
 *
 * @param unit the unit in which figures are tried
 */
record Asking(Calculator calculator, Map<String, String> typed, QuantityField unknown, Unit unit, Wish wish) {

    /** The working with that figure; null if the calculator refuses it. */
    Working with(double value) {
        return outcome(value).working();
    }

    Outcome outcome(double value) {
        return Outcome.with(calculator, typed, unknown, Quantity.of(value, unit));
    }

    /** What the calculator gives of what is wanted; not a number if it refuses. */
    double given(double value) {
        return wish.given(with(value));
    }
}
