package loomwright.quantity;

/**
 * A number with its unit. Keeps the unit it was given in, so that what the reader typed is what the working shows.
 *
 * @param value the number, in {@code unit}
 * @param unit the unit
 */
public record Quantity(double value, Unit unit) {
    private static final double SAME_WITHIN = 1e-9;

    public static Quantity of(double value, Unit unit) {
        return new Quantity(value, unit);
    }

    /** A plain number. */
    public static Quantity number(double value) {
        return new Quantity(value, Units.ONE);
    }

    /** The quantity whose number in base units is {@code base}, expressed in {@code unit}. */
    public static Quantity ofBase(double base, Unit unit) {
        return new Quantity(unit.fromBase(base), unit);
    }

    /** The number in base units. */
    public double base() {
        return unit.toBase(value);
    }

    /** Whether it is the same but for rounding, whatever the units; as a share of {@code other}, a thousand-millionth. */
    public boolean isSame(Quantity other) {
        return dimension().equals(other.dimension()) && Math.abs(base() - other.base()) <= SAME_WITHIN * Math.abs(other.base());
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /**
     * The same quantity in another unit of the same dimension.
     *
     * @throws IllegalArgumentException if the units measure different things
     */
    public Quantity in(Unit other) {
        if (other == unit) {
            return this;
        }
        if (!other.dimension().equals(unit.dimension())) {
            throw new IllegalArgumentException(unit.symbol() + " is not a unit of the same kind as " + other.symbol());
        }
        return ofBase(base(), other);
    }

    /** The quantity as a working shows it, such as {@code 0.5107 V} or {@code 2/0 AWG}. */
    public String text() {
        return joined(numberText());
    }

    /** The quantity to a stated number of significant digits. */
    public String text(int digits) {
        return unit == Units.AWG ? text() : joined(NumberText.significant(value, digits));
    }

    /** The number alone, as a working shows it. */
    public String numberText() {
        return unit == Units.AWG ? gaugeText() : NumberText.shown(value);
    }

    private String joined(String number) {
        if (unit == Units.ONE) {
            return number;
        }
        return unit == Units.PER_KELVIN ? number + unit.symbol() : number + "\u00a0" + unit.symbol();
    }

    /** Gauges above 1 are written 1/0, 2/0, 3/0 and 4/0. */
    private String gaugeText() {
        double rounded = Math.floor(value + 0.5);
        boolean whole = Math.abs(value - rounded) < 1e-6;
        if (whole && rounded <= 0 && rounded >= -3) {
            return (int) (1 - rounded) + "/0";
        }
        return NumberText.shown(value);
    }

    @Override
    public String toString() {
        return text();
    }
}
