package loomwright.formula;

import loomwright.quantity.Dimension;

/** Two quantities multiplied. */
record Product(Expression left, Expression right) implements Expression {
    @Override
    public double base(Values values) {
        return left.base(values) * right.base(values);
    }

    @Override
    public Dimension dimension() {
        return left.dimension().times(right.dimension());
    }
}
