package loomwright.conductor;

import static loomwright.conductor.GaugeSymbols.AWG_AREA;
import static loomwright.conductor.GaugeSymbols.DIAMETER;
import static loomwright.conductor.GaugeSymbols.DIFFERENCE;
import static loomwright.conductor.GaugeSymbols.GAUGE;
import static loomwright.conductor.GaugeSymbols.METRIC_AREA;
import static loomwright.conductor.GaugeSymbols.PI;
import static loomwright.conductor.GaugeSymbols.SAE_AREA;
import static loomwright.conductor.GaugeSymbols.SHORTFALL;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Documents;
import loomwright.worked.NamedFormula;

/** The formulas of sizes and gauges. */
final class GaugeFormulas {
    static final Quantity PI_VALUE = Quantity.number(Math.PI);

    /** 92 is 0.4600 in ÷ 0.0050 in, the diameters of 4/0 and 36 AWG, which lie 39 steps apart. source: ASTM B258, gauge rule. */
    static final Expression RATIO = Expression.number(92).toThe(Expression.number(36).minus(GAUGE).over(Expression.number(39)));

    static final Formula DIAMETER_FROM_GAUGE =
            new Formula(DIAMETER, Expression.fixed(Quantity.of(0.005, Units.INCHES)).times(RATIO));
    static final Formula AREA_FROM_DIAMETER =
            new Formula(Symbols.AREA, PI.over(Expression.number(4)).times(DIAMETER.squared()));
    static final Formula DIAMETER_FROM_AREA =
            new Formula(DIAMETER, Expression.number(4).times(Symbols.AREA).over(PI).squareRoot());
    static final Formula SAE_SHORTFALL = new Formula(SHORTFALL, AWG_AREA.minus(SAE_AREA).over(AWG_AREA));
    static final Formula METRIC_DIFFERENCE = new Formula(DIFFERENCE, METRIC_AREA.minus(Symbols.AREA).over(Symbols.AREA));

    static final List<NamedFormula> NAMED = List.of(
            new NamedFormula("diameter-from-gauge", DIAMETER_FROM_GAUGE),
            new NamedFormula("area-from-diameter", AREA_FROM_DIAMETER),
            new NamedFormula("diameter-from-area", DIAMETER_FROM_AREA),
            new NamedFormula("sae-shortfall", SAE_SHORTFALL),
            new NamedFormula("metric-difference", METRIC_DIFFERENCE));

    private GaugeFormulas() {}

    static Source gaugeRule() {
        return Source.of(Documents.astmB258(), "gauge rule");
    }
}
