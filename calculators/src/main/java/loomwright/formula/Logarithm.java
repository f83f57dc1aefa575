package loomwright.formula;

import loomwright.quantity.Dimension;

/** The natural logarithm of a plain number. */
record Logarithm(Expression of) implements Expression {
    @Override
    public double base(Values values) {
        return Math.log(of.base(values));
    }

    @Override
    public Dimension dimension() {
        Alike.requireNumber(of);
        return Dimension.NUMBER;
    }
}
