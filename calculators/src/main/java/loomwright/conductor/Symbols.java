package loomwright.conductor;

import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The letters used in the formulas on conductors. */
final class Symbols {
    static final Symbol CURRENT = Symbol.of("I", "design current", Dimension.CURRENT);
    static final Symbol ROUTE_LENGTH = Symbol.of("l", "route length, one way", Dimension.LENGTH);
    static final Symbol LENGTH = Symbol.of("L", "length of conductor", Dimension.LENGTH);
    static final Symbol CIRCUIT_LENGTH = Symbol.of("L", "circuit length, out and back", Dimension.LENGTH);
    static final Symbol AREA = Symbol.of("S", "cross-section", Dimension.AREA);
    static final Symbol PER_METRE_TABLE =
            Symbol.of("r", "t", "resistance of one metre in the table", Dimension.RESISTANCE_PER_LENGTH);
    static final Symbol PER_METRE_20 =
            Symbol.of("r", "20", "resistance of one metre at 20 °C", Dimension.RESISTANCE_PER_LENGTH);
    static final Symbol PER_METRE = Symbol.of("r", "resistance of one metre at its temperature", Dimension.RESISTANCE_PER_LENGTH);
    static final Symbol TEMPERATURE = Symbol.of("θ", "temperature of the conductor", Dimension.TEMPERATURE);
    static final Symbol TABLE_TEMPERATURE = Symbol.of("θ", "t", "temperature the table is for", Dimension.TEMPERATURE);
    static final Symbol RESISTANCE = Symbol.of("R", "resistance of the conductor", Dimension.RESISTANCE);
    static final Symbol CIRCUIT_RESISTANCE = Symbol.of("R", "resistance out and back", Dimension.RESISTANCE);
    static final Symbol SUPPLY_VOLTAGE = Symbol.of("U", "s", "supply voltage", Dimension.VOLTAGE);
    static final Symbol DROP = Symbol.of("U", "d", "voltage drop, out and back", Dimension.VOLTAGE);
    static final Symbol DROP_SHARE = Symbol.of("u", "voltage drop as a share of the supply voltage", Dimension.NUMBER);
    static final Symbol LOAD_VOLTAGE = Symbol.of("U", "load", "voltage at the load", Dimension.VOLTAGE);
    static final Symbol POWER_LOST = Symbol.of("P", "lost", "power lost as heat in the conductors", Dimension.POWER);

    private Symbols() {}
}
