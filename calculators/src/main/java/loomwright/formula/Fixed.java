package loomwright.formula;

import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;

/** A number or quantity that the formula itself contains. */
record Fixed(Quantity quantity) implements Expression {
    @Override
    public double base(Values values) {
        return quantity.base();
    }

    @Override
    public Dimension dimension() {
        return quantity.dimension();
    }
}
