package loomwright.formula;

import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;

/** One node of a formula. Built by the methods here, read by the writers of this package. */
public sealed interface Expression permits Symbol, Fixed, Sum, Difference, Product, Quotient, Power, Exponential, Logarithm {

    /** The number in base units, with the letters standing for {@code values}. */
    double base(Values values);

    /**
     * The dimension of this expression.
     *
     * @throws IllegalArgumentException if unlike things are added or subtracted
     */
    Dimension dimension();

    static Expression number(double value) {
        return new Fixed(Quantity.number(value));
    }

    static Expression fixed(Quantity quantity) {
        return new Fixed(quantity);
    }

    /** The natural logarithm of a plain number. */
    static Expression naturalLogarithm(Expression of) {
        return new Logarithm(of);
    }

    default Expression plus(Expression other) {
        return new Sum(this, other);
    }

    default Expression minus(Expression other) {
        return new Difference(this, other);
    }

    default Expression times(Expression other) {
        return new Product(this, other);
    }

    default Expression times(double number) {
        return new Product(this, number(number));
    }

    default Expression over(Expression other) {
        return new Quotient(this, other);
    }

    default Expression squared() {
        return new Power(this, 4);
    }

    default Expression squareRoot() {
        return new Power(this, 1);
    }

    /** This expression to the power one and a half. */
    default Expression toTheThreeHalves() {
        return new Power(this, 3);
    }

    /** A plain number to the power of a plain number. */
    default Expression toThe(Expression exponent) {
        return new Exponential(this, exponent);
    }
}
