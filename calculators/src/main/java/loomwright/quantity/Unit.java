package loomwright.quantity;

/**
 * A unit of measurement: how it is written, how it is said, and how a number in it becomes a number in the base unit.
 *
 * <p>Base units are V, A, m, s and °C (a kelvin of difference counts the same as a degree), so the base unit of area is m² and of
 * energy V·A·s. Two units do not convert by a factor: °F, and AWG, whose numbers fall as the conductor grows.
 */
public final class Unit {
    private final String symbol;
    private final String spoken;
    private final Dimension dimension;
    private final Scale scale;

    Unit(String symbol, String spoken, Dimension dimension, Scale scale) {
        this.symbol = symbol;
        this.spoken = spoken;
        this.dimension = dimension;
        this.scale = scale;
    }

    Unit(String symbol, String spoken, Dimension dimension, double factor) {
        this(symbol, spoken, dimension, new FactorScale(factor));
    }

    /** How the unit is written after a number, such as {@code mm²}. */
    public String symbol() {
        return symbol;
    }

    /** The unit in words, plural, such as {@code square millimetres}. */
    public String spoken() {
        return spoken;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The number in base units that is {@code value} of this unit. */
    public double toBase(double value) {
        return scale.toBase(value);
    }

    /** The number of this unit that is {@code base} in base units. */
    public double fromBase(double base) {
        return scale.fromBase(base);
    }

    @Override
    public String toString() {
        return symbol;
    }
}
