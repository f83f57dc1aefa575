package loomwright.quantity;

/** A unit that is a fixed multiple of the base unit. */
record FactorScale(double factor) implements Scale {
    @Override
    public double toBase(double value) {
        return value * factor;
    }

    @Override
    public double fromBase(double base) {
        return base / factor;
    }
}
