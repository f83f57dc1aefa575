package loomwright.supply;

import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The letters used in the formulas on energy and batteries. */
final class Symbols {
    static final Symbol VOLTAGE = Symbol.of("U", "system voltage", Dimension.VOLTAGE);
    static final Symbol CURRENT = Symbol.of("I", "current drawn", Dimension.CURRENT);
    static final Symbol POWER = Symbol.of("P", "power of the load", Dimension.POWER);
    static final Symbol TIME = Symbol.of("t", "time switched on in a day", Dimension.TIME);
    static final Symbol DUTY = Symbol.of("d", "share of that time it draws", Dimension.NUMBER);
    static final Symbol ENERGY = Symbol.of("E", "energy of a day", Dimension.ENERGY);
    static final Symbol CHARGE = Symbol.of("Q", "ampere-hours of a day", Dimension.CHARGE);
    static final Symbol CAPACITY = Symbol.of("C", "capacity of the battery", Dimension.CHARGE);
    static final Symbol DEPTH = Symbol.of("D", "usable depth of discharge", Dimension.NUMBER);
    static final Symbol MULTIPLIER = Symbol.of("m", "size multiplier in the cold", Dimension.NUMBER);
    static final Symbol COLD_SHARE = Symbol.of("c", "share of the capacity left in the cold", Dimension.NUMBER);
    static final Symbol USABLE = Symbol.of("Q", "u", "usable ampere-hours", Dimension.CHARGE);
    static final Symbol RUN_TIME = Symbol.of("t", "run time", Dimension.TIME);

    private Symbols() {}
}
