package loomwright.formula;

import loomwright.quantity.Dimension;

/** A quantity taken from another of the same kind. */
record Difference(Expression left, Expression right) implements Expression {
    @Override
    public double base(Values values) {
        return left.base(values) - right.base(values);
    }

    @Override
    public Dimension dimension() {
        return Alike.dimension(left, right);
    }
}
