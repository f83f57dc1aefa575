package loomwright.conductor;

import static loomwright.conductor.GaugeSymbols.AWG_AREA;
import static loomwright.conductor.GaugeSymbols.DIAMETER;
import static loomwright.conductor.GaugeSymbols.DIFFERENCE;
import static loomwright.conductor.GaugeSymbols.GAUGE;
import static loomwright.conductor.GaugeSymbols.LARGER_AREA;
import static loomwright.conductor.GaugeSymbols.METRIC_AREA;
import static loomwright.conductor.GaugeSymbols.PI;
import static loomwright.conductor.GaugeSymbols.SAE_AREA;
import static loomwright.conductor.GaugeSymbols.SHORTFALL;
import static loomwright.conductor.GaugeSymbols.THINNER_AREA;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.WorkingBuilder;

/** The known mistakes with areas, diameters and gauges. */
final class GaugeSlips {
    private static final Expression MILLIMETRE = Expression.fixed(Quantity.of(1, Units.MILLIMETRE));
    private static final Expression QUARTER_PI = PI.over(Expression.number(4));

    private static final Formula DIAMETER_FOR_AREA = new Formula(Symbols.AREA, DIAMETER.times(MILLIMETRE));
    private static final Formula SQUARE_FOR_CIRCLE = new Formula(Symbols.AREA, DIAMETER.squared());
    private static final Formula DIAMETER_AS_RADIUS = new Formula(Symbols.AREA, PI.times(DIAMETER.squared()));
    private static final Formula RADIUS_AS_DIAMETER =
            new Formula(Symbols.AREA, QUARTER_PI.times(DIAMETER.over(Expression.number(2)).squared()));
    private static final Formula RATIO_OF_DIAMETERS =
            new Formula(Symbols.AREA, Expression.fixed(Quantity.of(25, Units.CIRCULAR_MIL)).times(GaugeFormulas.RATIO));
    private static final Formula SQUARE_MILS = new Formula(Symbols.AREA, QUARTER_PI.times(Symbols.AREA));
    private static final Formula CIRCULAR_AS_SQUARE = new Formula(Symbols.AREA, Symbols.AREA.over(QUARTER_PI));
    private static final Formula AREA_FOR_DIAMETER = new Formula(DIAMETER, Symbols.AREA.over(MILLIMETRE));
    private static final Formula SIDE_OF_SQUARE = new Formula(DIAMETER, Symbols.AREA.squareRoot());
    private static final Formula RADIUS = new Formula(DIAMETER, Symbols.AREA.over(PI).squareRoot());
    private static final Formula SAE_FOR_AWG = new Formula(Symbols.AREA, SAE_AREA);
    private static final Formula AWG_FOR_SAE = new Formula(Symbols.AREA, AWG_AREA);
    private static final Formula SHARE_OF_SAE = new Formula(SHORTFALL, AWG_AREA.minus(SAE_AREA).over(SAE_AREA));
    private static final Formula SHARE_OF_METRIC = new Formula(DIFFERENCE, METRIC_AREA.minus(Symbols.AREA).over(METRIC_AREA));
    private static final Formula THINNER = new Formula(LARGER_AREA, THINNER_AREA);

    private GaugeSlips() {}

    static void add(WorkingBuilder working, Quantity size, Quantity area, Quantity diameter, MetricSize metric, SaeSize sae) {
        Values values = Values.of(PI, GaugeFormulas.PI_VALUE).with(Symbols.AREA, area).with(DIAMETER, diameter);
        if (size.unit() == Units.AWG && !sae.named()) {
            addRound(working, values);
            working.slip(
                    "ratio-of-diameters", "area", "Areas stepped up like diameters",
                    "The gauge rule gives diameters; the area grows with the diameter times itself.", RATIO_OF_DIAMETERS,
                    values.with(GAUGE, Quantity.number(size.value())));
        } else if (size.dimension().equals(Dimension.LENGTH)) {
            addRound(working, values);
        } else {
            addFromArea(working, values);
        }
        if (size.unit() == Units.CIRCULAR_MIL) {
            working.slip(
                    "circular-as-square-mils", "area", "Circular mils taken as square mils",
                    "A circular mil is a circle: π/4 of the square around it.", CIRCULAR_AS_SQUARE, values);
        } else {
            working.slip(
                    "square-mils", "area-circular-mils", "Square mils in place of circular mils",
                    "A circle of one mil is one circular mil, and only π/4 of a square mil.", SQUARE_MILS, values);
        }
        addMetric(working, metric, values);
        if (sae.row() != null) {
            addSae(working, sae);
        }
    }

    /** With a diameter on the way to the area. */
    private static void addRound(WorkingBuilder working, Values values) {
        working.slip(
                "diameter-for-area", "area", "The diameter used in place of the area", "Millimetres across are not square millimetres.",
                DIAMETER_FOR_AREA, values);
        working.slip(
                "square-for-circle", "area", "The square used in place of the circle", "A circle fills only π/4 of the square around it.",
                SQUARE_FOR_CIRCLE, values);
        working.slip(
                "diameter-as-radius", "area", "The diameter taken as radius", "π times the radius squared wants half the diameter.",
                DIAMETER_AS_RADIUS, values);
        working.slip(
                "radius-as-diameter", "area", "The radius taken as diameter", "π/4 goes with the whole diameter.", RADIUS_AS_DIAMETER,
                values);
    }

    private static void addFromArea(WorkingBuilder working, Values values) {
        working.slip(
                "area-for-diameter", "diameter", "The area used in place of the diameter", "Square millimetres are not millimetres across.",
                AREA_FOR_DIAMETER, values);
        working.slip(
                "side-of-square", "diameter", "The root of the area used in place of the diameter",
                "That is the side of a square; a circle of the same area is wider.", SIDE_OF_SQUARE, values);
        working.slip(
                "radius-for-diameter", "diameter", "The radius used in place of the diameter", "The diameter is twice the radius.", RADIUS,
                values);
    }

    private static void addMetric(WorkingBuilder working, MetricSize metric, Values values) {
        working.slip(
                "share-of-metric", "metric-difference", "The share taken of the metric size", "Compare with the size you started from.",
                SHARE_OF_METRIC, values.with(METRIC_AREA, metric.nearestSize()));
        if (metric.below() != null && metric.enough() != null) {
            working.slip(
                    "thinner-size", "next-larger-metric", "The size below taken", "It has less copper than the one it replaces.", THINNER,
                    Values.of(THINNER_AREA, metric.below().quantity("size")));
        }
    }

    private static void addSae(WorkingBuilder working, SaeSize sae) {
        Values values = Values.of(AWG_AREA, sae.awgArea()).with(SAE_AREA, sae.saeArea());
        if (sae.named()) {
            working.slip(
                    "sae-as-awg", "area", "SAE gauge taken as AWG", "The same number has less copper in SAE gauge.", AWG_FOR_SAE, values);
        } else {
            working.slip(
                    "awg-as-sae", "area", "AWG taken as SAE gauge", "The same number has more copper in AWG.", SAE_FOR_AWG, values);
        }
        working.slip(
                "share-of-sae", "sae-shortfall", "The share taken of the SAE area",
                "What is missing is missing from AWG: divide by its area.",
                SHARE_OF_SAE, values);
    }
}
