package loomwright.supply;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The formulas of two ways to charge a device, right and wrong. */
final class RouteFormulas {
    static final Symbol POWER = Symbol.of("P", "power at the device", Dimension.POWER);
    static final Symbol HOURS = Symbol.of("t", "time it charges in a day", Dimension.TIME);
    static final Symbol DEVICE = Symbol.of("E", "energy into the device in a day", Dimension.ENERGY);
    static final Symbol DIRECT_EFFICIENCY = Symbol.of("η", "d", "efficiency of the direct charger", Dimension.NUMBER);
    static final Symbol INVERTER_EFFICIENCY = Symbol.of("η", "i", "efficiency of the inverter", Dimension.NUMBER);
    static final Symbol ADAPTER_EFFICIENCY = Symbol.of("η", "a", "efficiency of the mains adapter", Dimension.NUMBER);
    static final Symbol DIRECT_STANDING = Symbol.of("P", "d", "standing draw of the direct charger", Dimension.POWER);
    static final Symbol INVERTER_STANDING = Symbol.of("P", "i", "standing draw of the inverter", Dimension.POWER);
    static final Symbol ADAPTER_STANDING = Symbol.of("P", "a", "standing draw of the mains adapter", Dimension.POWER);
    static final Symbol DIRECT_HOURS = Symbol.of("t", "d", "time the direct charger is switched on", Dimension.TIME);
    static final Symbol INVERTER_HOURS = Symbol.of("t", "i", "time the inverter is switched on", Dimension.TIME);
    static final Symbol DIRECT_IDLE = Symbol.of("E", "d0", "energy of the idle direct charger", Dimension.ENERGY);
    static final Symbol INVERTER_IDLE = Symbol.of("E", "i0", "energy of the idle inverter and adapter", Dimension.ENERGY);
    static final Symbol DIRECT = Symbol.of("E", "d", "energy from the battery, direct", Dimension.ENERGY);
    static final Symbol BY_INVERTER = Symbol.of("E", "i", "energy from the battery, by inverter", Dimension.ENERGY);
    static final Symbol DIFFERENCE = Symbol.of("ΔE", "extra energy of the inverter route", Dimension.ENERGY);
    static final Symbol LOST = Symbol.of("E", "lost", "energy that becomes heat", Dimension.ENERGY);
    static final Symbol EXTRA_CHARGE = Symbol.of("ΔQ", "extra ampere-hours of the inverter route", Dimension.CHARGE);
    static final Symbol ROUTE_EFFICIENCY = Symbol.of("η", "whole", "efficiency of the inverter route over the day", Dimension.NUMBER);
    static final Symbol BREAK_EVEN = Symbol.of("η", "even", "efficiency at which direct charging is no better", Dimension.NUMBER);

    static final Formula DEVICE_ENERGY = new Formula(DEVICE, POWER.times(HOURS));
    static final Formula DIRECT_IDLE_ENERGY = new Formula(DIRECT_IDLE, DIRECT_STANDING.times(DIRECT_HOURS.minus(HOURS)));
    static final Formula INVERTER_IDLE_ENERGY =
            new Formula(INVERTER_IDLE, INVERTER_STANDING.plus(ADAPTER_STANDING).times(INVERTER_HOURS.minus(HOURS)));
    static final Formula DIRECT_ENERGY = new Formula(DIRECT, DEVICE.over(DIRECT_EFFICIENCY).plus(DIRECT_IDLE));
    static final Formula INVERTER_ENERGY =
            new Formula(BY_INVERTER, DEVICE.over(INVERTER_EFFICIENCY.times(ADAPTER_EFFICIENCY)).plus(INVERTER_IDLE));
    static final Formula EXTRA = new Formula(DIFFERENCE, BY_INVERTER.minus(DIRECT));
    static final Formula EXTRA_AMPERE_HOURS = new Formula(EXTRA_CHARGE, DIFFERENCE.over(Symbols.VOLTAGE));
    static final Formula DIRECT_LOST = new Formula(LOST, DIRECT.minus(DEVICE));
    static final Formula INVERTER_LOST = new Formula(LOST, BY_INVERTER.minus(DEVICE));
    static final Formula WHOLE_EFFICIENCY = new Formula(ROUTE_EFFICIENCY, DEVICE.over(BY_INVERTER));
    static final Formula BREAK_EVEN_EFFICIENCY = new Formula(BREAK_EVEN, DEVICE.over(BY_INVERTER.minus(DIRECT_IDLE)));

    static final Formula DIRECT_MULTIPLIED = new Formula(DIRECT, DEVICE.times(DIRECT_EFFICIENCY).plus(DIRECT_IDLE));
    static final Formula DIRECT_WITHOUT_LOSS = new Formula(DIRECT, DEVICE.plus(DIRECT_IDLE));
    static final Formula ADAPTER_LEFT_OUT = new Formula(BY_INVERTER, DEVICE.over(INVERTER_EFFICIENCY).plus(INVERTER_IDLE));
    static final Formula STANDING_LEFT_OUT =
            new Formula(BY_INVERTER, DEVICE.over(INVERTER_EFFICIENCY.times(ADAPTER_EFFICIENCY)));
    static final Formula EFFICIENCIES_AVERAGED = new Formula(
            BY_INVERTER,
            Expression.number(2).times(DEVICE).over(INVERTER_EFFICIENCY.plus(ADAPTER_EFFICIENCY)).plus(INVERTER_IDLE));
    static final Formula INVERTER_MULTIPLIED =
            new Formula(BY_INVERTER, DEVICE.times(INVERTER_EFFICIENCY).times(ADAPTER_EFFICIENCY).plus(INVERTER_IDLE));

    private RouteFormulas() {}
}
