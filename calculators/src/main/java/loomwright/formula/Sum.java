package loomwright.formula;

import loomwright.quantity.Dimension;

/** Two quantities of the same kind added. */
record Sum(Expression left, Expression right) implements Expression {
    @Override
    public double base(Values values) {
        return left.base(values) + right.base(values);
    }

    @Override
    public Dimension dimension() {
        return Alike.dimension(left, right);
    }
}
