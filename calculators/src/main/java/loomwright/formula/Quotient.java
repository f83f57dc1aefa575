package loomwright.formula;

import loomwright.quantity.Dimension;

/** A quantity divided by another. */
record Quotient(Expression left, Expression right) implements Expression {
    @Override
    public double base(Values values) {
        return left.base(values) / right.base(values);
    }

    @Override
    public Dimension dimension() {
        return left.dimension().per(right.dimension());
    }
}
