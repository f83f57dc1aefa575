package loomwright.switching;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The chain of heat from the junction of a semiconductor to the air. */
final class HeatFormulas {
    private static final Dimension PER_WATT = Dimension.TEMPERATURE.per(Dimension.POWER);

    static final Symbol DROP = Symbol.of("U", "on", "voltage drop of the switch", Dimension.VOLTAGE);
    static final Symbol HEAT = Symbol.of("P", "heat in the switch", Dimension.POWER);
    static final Symbol JUNCTION_CASE = Symbol.of("R", "jc", "thermal resistance from junction to case", PER_WATT);
    static final Symbol CASE_SINK = Symbol.of("R", "cs", "thermal resistance from case to heat sink", PER_WATT);
    static final Symbol SINK_AIR = Symbol.of("R", "sa", "thermal resistance from heat sink to air", PER_WATT);
    static final Symbol AMBIENT = Symbol.of("θ", "a", "temperature of the air", Dimension.TEMPERATURE);
    static final Symbol JUNCTION = Symbol.of("θ", "j", "temperature of the junction", Dimension.TEMPERATURE);
    static final Symbol CASE = Symbol.of("θ", "c", "temperature of the case", Dimension.TEMPERATURE);
    static final Symbol SINK = Symbol.of("θ", "s", "temperature of the heat sink", Dimension.TEMPERATURE);
    static final Symbol LIMIT = Symbol.of("θ", "j,max", "highest temperature the junction may have", Dimension.TEMPERATURE);
    static final Symbol HIGHEST_AMBIENT = Symbol.of("θ", "a,max", "highest temperature of the air", Dimension.TEMPERATURE);
    static final Symbol SINK_NEEDED = Symbol.of("R", "sa,max", "largest thermal resistance the heat sink may have", PER_WATT);

    private static final Expression CHAIN = JUNCTION_CASE.plus(CASE_SINK).plus(SINK_AIR);

    static final Formula HEAT_OF_DROP = new Formula(HEAT, SwitchSymbols.CURRENT.times(DROP));
    static final Formula JUNCTION_TEMPERATURE = new Formula(JUNCTION, AMBIENT.plus(HEAT.times(CHAIN)));
    static final Formula CASE_TEMPERATURE = new Formula(CASE, AMBIENT.plus(HEAT.times(CASE_SINK.plus(SINK_AIR))));
    static final Formula SINK_TEMPERATURE = new Formula(SINK, AMBIENT.plus(HEAT.times(SINK_AIR)));
    static final Formula AMBIENT_ALLOWED = new Formula(HIGHEST_AMBIENT, LIMIT.minus(HEAT.times(CHAIN)));
    static final Formula SINK_RESISTANCE =
            new Formula(SINK_NEEDED, LIMIT.minus(AMBIENT).over(HEAT).minus(JUNCTION_CASE).minus(CASE_SINK));

    static final Formula SLIP_SINK_LEFT_OUT = new Formula(JUNCTION, AMBIENT.plus(HEAT.times(JUNCTION_CASE.plus(CASE_SINK))));
    static final Formula SLIP_AMBIENT_LEFT_OUT = new Formula(JUNCTION, HEAT.times(CHAIN));
    static final Formula SLIP_AMBIENT_WITHOUT_CASE =
            new Formula(HIGHEST_AMBIENT, LIMIT.minus(HEAT.times(JUNCTION_CASE)));
    static final Formula SLIP_WHOLE_CHAIN_FOR_SINK = new Formula(SINK_NEEDED, LIMIT.minus(AMBIENT).over(HEAT));

    private HeatFormulas() {}
}
