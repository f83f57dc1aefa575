package loomwright.quantity;

/** Degrees Fahrenheit against degrees Celsius. */
final class FahrenheitScale implements Scale {
    @Override
    public double toBase(double value) {
        return (value - 32) / 1.8;
    }

    @Override
    public double fromBase(double base) {
        return base * 1.8 + 32;
    }
}
