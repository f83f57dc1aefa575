package loomwright.protection;

import loomwright.conductor.AmpacitySymbols;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The letters of choosing a fuse-link. */
final class FuseSymbols {
    static final Symbol TABLE_CURRENT = AmpacitySymbols.TABLE_CURRENT;
    static final Symbol AMPACITY = AmpacitySymbols.AMPACITY;
    static final Symbol RULE_SHARE = Symbol.of("k", "share of the ampacity that the rule allows", Dimension.NUMBER);
    static final Symbol HIGHEST = Symbol.of("I", "high", "highest rating the conductor allows", Dimension.CURRENT);
    static final Symbol DESIGN = Symbol.of("I", "b", "design current", Dimension.CURRENT);
    static final Symbol LOAD_SHARE = Symbol.of("c", "share of the rating a load may take for hours", Dimension.NUMBER);
    static final Symbol WARM_CURRENT = Symbol.of("I", "w", "current the fuse-link of the sheet may carry in the warm", Dimension.CURRENT);
    static final Symbol SHEET_RATING = Symbol.of("I", "s", "rating of the fuse-link of the sheet", Dimension.CURRENT);
    static final Symbol WARM_SHARE = Symbol.of("w", "share of the rating left in the warm", Dimension.NUMBER);
    static final Symbol LEAST = Symbol.of("I", "least", "least rating the load asks for", Dimension.CURRENT);
    static final Symbol CHOSEN = Symbol.of("I", "n", "rating of the fuse-link", Dimension.CURRENT);
    static final Symbol OTHER_RATING = Symbol.of("I", "x", "rating taken by mistake", Dimension.CURRENT);
    static final Symbol LOADING = Symbol.of("b", "load as a share of the rating", Dimension.NUMBER);

    private FuseSymbols() {}
}
