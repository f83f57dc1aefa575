package loomwright.conductor;

import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The letters used in the formulas on ampacity. */
public final class AmpacitySymbols {
    public static final Symbol TABLE_CURRENT = Symbol.of("I", "t", "current in the table", Dimension.CURRENT);
    static final Symbol WARMTH_FACTOR = Symbol.of("k", "a", "factor for warm surroundings", Dimension.NUMBER);
    static final Symbol BUNDLE_FACTOR = Symbol.of("k", "b", "factor for conductors bundled together", Dimension.NUMBER);
    static final Symbol OWN_FACTOR = Symbol.of("k", "own", "factor of your own", Dimension.NUMBER);
    public static final Symbol AMPACITY = Symbol.of("I", "z", "ampacity, the current the conductor may carry", Dimension.CURRENT);

    static final Symbol LOAD_SHARE = Symbol.of("u", "design current as a share of the ampacity", Dimension.NUMBER);

    private AmpacitySymbols() {}
}
