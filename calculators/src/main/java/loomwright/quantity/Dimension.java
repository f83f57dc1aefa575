package loomwright.quantity;

/**
 * What kind of quantity something is, as powers of volt, ampere, metre, second and kelvin.
 *
 * <p>Powers are counted in halves, because the constant of the adiabatic equation is in A·√s/mm². Watt is volt × ampere, ohm is
 * volt ÷ ampere, newton is volt × ampere × second ÷ metre.
 *
 * @param volt twice the power of volt
 * @param ampere twice the power of ampere
 * @param metre twice the power of metre
 * @param second twice the power of second
 * @param kelvin twice the power of kelvin
 */
public record Dimension(int volt, int ampere, int metre, int second, int kelvin) {
    /** A plain number. */
    public static final Dimension NUMBER = new Dimension(0, 0, 0, 0, 0);

    public static final Dimension VOLTAGE = whole(1, 0, 0, 0, 0);
    public static final Dimension CURRENT = whole(0, 1, 0, 0, 0);
    public static final Dimension LENGTH = whole(0, 0, 1, 0, 0);
    public static final Dimension TIME = whole(0, 0, 0, 1, 0);
    public static final Dimension TEMPERATURE = whole(0, 0, 0, 0, 1);
    public static final Dimension RESISTANCE = VOLTAGE.per(CURRENT);
    public static final Dimension POWER = VOLTAGE.times(CURRENT);
    public static final Dimension AREA = LENGTH.times(LENGTH);
    public static final Dimension CHARGE = CURRENT.times(TIME);
    public static final Dimension ENERGY = POWER.times(TIME);
    public static final Dimension FORCE = ENERGY.per(LENGTH);
    public static final Dimension RESISTANCE_PER_LENGTH = RESISTANCE.per(LENGTH);
    public static final Dimension RESISTIVITY = RESISTANCE.times(LENGTH);

    private static Dimension whole(int volt, int ampere, int metre, int second, int kelvin) {
        return new Dimension(2 * volt, 2 * ampere, 2 * metre, 2 * second, 2 * kelvin);
    }

    /** The dimension of a product. */
    public Dimension times(Dimension other) {
        return new Dimension(
                volt + other.volt, ampere + other.ampere, metre + other.metre, second + other.second, kelvin + other.kelvin);
    }

    /** The dimension of a quotient. */
    public Dimension per(Dimension other) {
        return new Dimension(
                volt - other.volt, ampere - other.ampere, metre - other.metre, second - other.second, kelvin - other.kelvin);
    }

    /**
     * The dimension raised to a power given in halves: 4 squares it, 1 takes its root.
     *
     * @throws IllegalArgumentException if the result would need a quarter power
     */
    public Dimension toTheHalves(int halves) {
        return new Dimension(
                half(volt * halves), half(ampere * halves), half(metre * halves), half(second * halves), half(kelvin * halves));
    }

    private static int half(int doubled) {
        if (doubled % 2 != 0) {
            throw new IllegalArgumentException("no such power of a unit");
        }
        return doubled / 2;
    }
}
