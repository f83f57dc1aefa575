package loomwright.conductor;

import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The letters of sizes and gauges. */
final class GaugeSymbols {
    static final Symbol GAUGE = Symbol.of("n", "AWG number; 0 stands for 1/0, −1 for 2/0, −2 for 3/0, −3 for 4/0", Dimension.NUMBER);
    static final Symbol PI = Symbol.of("π", "circumference of a circle divided by its diameter", Dimension.NUMBER);
    static final Symbol DIAMETER = Symbol.of("d", "diameter of a solid round wire of this area", Dimension.LENGTH);
    static final Symbol AWG_AREA = Symbol.of("S", "AWG", "cross-section of the AWG number", Dimension.AREA);
    static final Symbol SAE_AREA = Symbol.of("S", "SAE", "cross-section of the SAE gauge number", Dimension.AREA);
    static final Symbol SHORTFALL = Symbol.of("s", "copper that SAE gauge lacks, as a share of AWG", Dimension.NUMBER);
    static final Symbol METRIC_AREA = Symbol.of("S", "m", "nearest metric size", Dimension.AREA);
    static final Symbol LARGER_AREA = Symbol.of("S", "l", "first metric size with enough copper", Dimension.AREA);
    static final Symbol THINNER_AREA = Symbol.of("S", "t", "metric size below it", Dimension.AREA);
    static final Symbol DIFFERENCE = Symbol.of("m", "copper of the nearest metric size against it", Dimension.NUMBER);

    private GaugeSymbols() {}
}
