package loomwright.switching;

import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The letters of the formulas on switching. */
final class SwitchSymbols {
    static final Symbol SUPPLY = Symbol.of("U", "supply voltage", Dimension.VOLTAGE);
    static final Symbol RATED_VOLTAGE = Symbol.of("U", "r", "voltage the coil is rated for", Dimension.VOLTAGE);
    static final Symbol RATED_POWER = Symbol.of("P", "r", "power of the coil at its rated voltage", Dimension.POWER);
    static final Symbol COIL_RESISTANCE = Symbol.of("R", "coil", "resistance of the coil", Dimension.RESISTANCE);
    static final Symbol COIL_CURRENT = Symbol.of("I", "coil", "current in the coil", Dimension.CURRENT);
    static final Symbol COIL_POWER = Symbol.of("P", "coil", "power of the coil", Dimension.POWER);
    static final Symbol HOURS = Symbol.of("t", "time switched on in a day", Dimension.TIME);
    static final Symbol CHARGE = Symbol.of("Q", "charge taken in a day", Dimension.CHARGE);
    static final Symbol ENERGY = Symbol.of("W", "energy taken in a day", Dimension.ENERGY);
    static final Symbol CAPACITY = Symbol.of("C", "capacity of the battery", Dimension.CHARGE);
    static final Symbol SHARE = Symbol.of("s", "share of the battery used in a day", Dimension.NUMBER);
    static final Symbol CURRENT = Symbol.of("I", "current switched", Dimension.CURRENT);
    static final Symbol ON_RESISTANCE = Symbol.of("R", "on", "resistance of the solid-state switch when on", Dimension.RESISTANCE);
    static final Symbol CONTACT = Symbol.of("R", "c", "resistance of the relay contact", Dimension.RESISTANCE);
    static final Symbol DROP = Symbol.of("U", "on", "voltage drop of the switch", Dimension.VOLTAGE);
    static final Symbol HEAT = Symbol.of("P", "heat in the switch", Dimension.POWER);
    static final Symbol TRIGGER = Symbol.of("I", "t", "trigger current", Dimension.CURRENT);

    private SwitchSymbols() {}
}
