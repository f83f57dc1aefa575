package loomwright.load;

import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The four letters of Ohm's law and power; and the same four as bare numbers, for mistakes that pay no heed to units. */
final class OhmSymbols {
    static final Symbol VOLTAGE = Symbol.of("U", "voltage", Dimension.VOLTAGE);
    static final Symbol CURRENT = Symbol.of("I", "current", Dimension.CURRENT);
    static final Symbol RESISTANCE = Symbol.of("R", "resistance", Dimension.RESISTANCE);
    static final Symbol POWER = Symbol.of("P", "power", Dimension.POWER);

    static final Symbol VOLTS = Symbol.of("U", "bare number of volts", Dimension.NUMBER);
    static final Symbol AMPERES = Symbol.of("I", "bare number of amperes", Dimension.NUMBER);
    static final Symbol OHMS = Symbol.of("R", "bare number of ohms", Dimension.NUMBER);
    static final Symbol WATTS = Symbol.of("P", "bare number of watts", Dimension.NUMBER);

    private OhmSymbols() {}
}
