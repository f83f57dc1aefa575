package loomwright.formula;

import loomwright.quantity.Dimension;

/** The rule that only like things may be added or subtracted. */
final class Alike {
    private Alike() {}

    static Dimension dimension(Expression left, Expression right) {
        Dimension dimension = left.dimension();
        if (!dimension.equals(right.dimension())) {
            throw new IllegalArgumentException(
                    PlainText.symbolic(left) + " and " + PlainText.symbolic(right) + " are not of the same kind");
        }
        return dimension;
    }

    static void requireNumber(Expression expression) {
        if (!expression.dimension().equals(Dimension.NUMBER)) {
            throw new IllegalArgumentException(PlainText.symbolic(expression) + " is not a plain number");
        }
    }
}
