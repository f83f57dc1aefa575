package loomwright.formula;

import loomwright.quantity.Dimension;

/** A quantity to a fixed power, counted in halves: 4 is the square, 1 the square root. */
record Power(Expression of, int halves) implements Expression {
    @Override
    public double base(Values values) {
        double value = of.base(values);
        double root = halves % 2 == 0 ? 1 : Math.sqrt(value);
        for (int i = 0; i < halves / 2; i++) {
            root *= value;
        }
        return root;
    }

    @Override
    public Dimension dimension() {
        return of.dimension().toTheHalves(halves);
    }
}
