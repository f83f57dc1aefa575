package loomwright.formula;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** How tightly the parts of an expression hold together; a looser part inside a tighter one needs brackets. */
final class Binding {
    static final int SUM = 1;
    static final int PRODUCT = 2;
    static final int POWER = 3;
    static final int SINGLE = 4;

    private Binding() {}

    static int of(Expression expression, Leaves leaves) {
        if (expression instanceof Sum || expression instanceof Difference) {
            return SUM;
        }
        if (expression instanceof Product || expression instanceof Quotient) {
            return PRODUCT;
        }
        if (expression instanceof Power || expression instanceof Exponential) {
            return POWER;
        }
        return of(quantity(expression, leaves));
    }

    /** A number with its unit needs brackets under a power only; a negative one everywhere but in a sum. */
    private static int of(Quantity quantity) {
        if (quantity == null) {
            return SINGLE;
        }
        if (quantity.value() < 0 && quantity.unit() != Units.AWG) {
            return SUM;
        }
        return quantity.unit() == Units.ONE ? SINGLE : POWER;
    }

    /** The quantity written for a leaf, or null for a letter or anything larger. */
    static Quantity quantity(Expression expression, Leaves leaves) {
        if (expression instanceof Fixed fixed) {
            return fixed.quantity();
        }
        return expression instanceof Symbol symbol ? leaves.quantity(symbol) : null;
    }
}
