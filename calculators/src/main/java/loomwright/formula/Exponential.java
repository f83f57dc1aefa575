package loomwright.formula;

import loomwright.quantity.Dimension;

/** A plain number to the power of a plain number. */
record Exponential(Expression of, Expression exponent) implements Expression {
    @Override
    public double base(Values values) {
        return Math.pow(of.base(values), exponent.base(values));
    }

    @Override
    public Dimension dimension() {
        Alike.requireNumber(of);
        Alike.requireNumber(exponent);
        return Dimension.NUMBER;
    }
}
