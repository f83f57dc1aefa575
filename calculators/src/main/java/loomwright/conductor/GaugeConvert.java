package loomwright.conductor;

import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/**
 * One conductor size by all its names: AWG, SAE gauge, mm², circular mils, diameter.
 *
 * <p>d = 0.005 in × 92^((36 − n)/39) for gauge n, S = π/4 × d². Holds from 40 AWG to 4/0 and up to 150 mm². SAE areas come from a table.
 *
 * @source ASTM B258, gauge rule; boat-cable tables for SAE gauge; IEC 60228 for the metric series
 */
public final class GaugeConvert implements Calculator {
    @Override
    public Description description() {
        return GaugeFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity size = entries.quantity("size");
        boolean gauge = size.unit() == Units.AWG;
        SaeSize sae = gauge ? SaeSize.of(working, size, entries.choice("named-by").equals("sae")) : SaeSize.NONE;
        Quantity diameter = sae.named() ? null : diameter(working, size);
        Quantity area = sae.named() ? sae.area() : area(working, size, diameter);
        if (diameter == null) {
            diameter = working.compute(
                    "Find the diameter of a solid wire of this area", GaugeFormulas.DIAMETER_FROM_AREA,
                    Values.of(Symbols.AREA, area).with(GaugeSymbols.PI, GaugeFormulas.PI_VALUE), Units.MILLIMETRE,
                    "The area of a circle is π/4 of its diameter squared; this is the way back.");
        }
        working.result("area", area);
        working.result("area-circular-mils", circularMils(working, size, area));
        working.result("diameter", diameter);
        GaugeSeries.awg(working, gauge && !sae.named() ? size : null, area);
        MetricSize metric = GaugeSeries.metric(working, area);
        sae.compare(working, size, area);
        GaugeFindings.add(working, size, area, metric, sae);
        GaugeSlips.add(working, size, area, diameter, metric, sae);
        GaugeFindings.addNext(working, size, area, sae);
    }

    /** The diameter, if it is the way to the area; null if the area was entered. */
    private static Quantity diameter(WorkingBuilder working, Quantity size) {
        if (size.unit() == Units.AWG) {
            return working.compute(
                    "Find the diameter of the gauge", GaugeFormulas.DIAMETER_FROM_GAUGE,
                    Values.of(GaugeSymbols.GAUGE, Quantity.number(size.value())), Units.MILLIMETRE,
                    "From 36 AWG to 4/0 the diameter grows 92 times in 39 equal steps.", GaugeFormulas.gaugeRule());
        }
        if (size.dimension().equals(Dimension.LENGTH)) {
            return working.convert("Turn the diameter into millimetres", size, Units.MILLIMETRE, "The area will be in square millimetres.");
        }
        return null;
    }

    private static Quantity area(WorkingBuilder working, Quantity size, Quantity diameter) {
        if (diameter == null) {
            return working.convert("Turn the area into square millimetres", size, Units.SQUARE_MILLIMETRE, "Metric sizes are in mm².");
        }
        return working.compute(
                "Find the area of the circle", GaugeFormulas.AREA_FROM_DIAMETER,
                Values.of(GaugeSymbols.PI, GaugeFormulas.PI_VALUE).with(GaugeSymbols.DIAMETER, diameter), Units.SQUARE_MILLIMETRE,
                "It is the area that carries the current; a circle fills π/4 of its square.");
    }

    private static Quantity circularMils(WorkingBuilder working, Quantity size, Quantity area) {
        if (size.unit() == Units.CIRCULAR_MIL) {
            return size;
        }
        return working.convert(
                "Turn the area into circular mils", area, Units.CIRCULAR_MIL,
                "One circular mil is the area of a circle one thousandth of an inch across.");
    }
}
