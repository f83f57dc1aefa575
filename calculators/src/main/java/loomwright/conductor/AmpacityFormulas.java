package loomwright.conductor;

import loomwright.formula.Expression;
import loomwright.formula.Formula;

/** The formulas of ampacity, right and wrong. */
final class AmpacityFormulas {
    static final Formula UNCHANGED = new Formula(AmpacitySymbols.AMPACITY, AmpacitySymbols.TABLE_CURRENT);
    static final Formula WARM = of(AmpacitySymbols.TABLE_CURRENT.times(AmpacitySymbols.WARMTH_FACTOR));
    static final Formula BUNDLED = of(AmpacitySymbols.TABLE_CURRENT.times(AmpacitySymbols.BUNDLE_FACTOR));
    static final Formula WARM_AND_BUNDLED =
            of(AmpacitySymbols.TABLE_CURRENT.times(AmpacitySymbols.WARMTH_FACTOR).times(AmpacitySymbols.BUNDLE_FACTOR));

    static final Formula OWN = of(AmpacitySymbols.TABLE_CURRENT.times(AmpacitySymbols.OWN_FACTOR));

    static final Formula LOADING =
            new Formula(AmpacitySymbols.LOAD_SHARE, Symbols.CURRENT.over(AmpacitySymbols.AMPACITY));

    static final Formula WARMTH_TURNED_OVER = of(AmpacitySymbols.TABLE_CURRENT.over(AmpacitySymbols.WARMTH_FACTOR));
    static final Formula WARMTH_TURNED_OVER_BUNDLED =
            of(AmpacitySymbols.TABLE_CURRENT.over(AmpacitySymbols.WARMTH_FACTOR).times(AmpacitySymbols.BUNDLE_FACTOR));
    static final Formula BUNDLE_TURNED_OVER = of(AmpacitySymbols.TABLE_CURRENT.over(AmpacitySymbols.BUNDLE_FACTOR));
    static final Formula BUNDLE_TURNED_OVER_WARM =
            of(AmpacitySymbols.TABLE_CURRENT.times(AmpacitySymbols.WARMTH_FACTOR).over(AmpacitySymbols.BUNDLE_FACTOR));
    static final Formula TAKEN_AWAY =
            of(AmpacitySymbols.TABLE_CURRENT.times(Expression.number(1).minus(AmpacitySymbols.WARMTH_FACTOR)));
    static final Formula FUSE_LIMIT = of(Expression.number(1.5).times(AmpacitySymbols.TABLE_CURRENT));
    static final Formula DOUBLED = of(Expression.number(2).times(AmpacitySymbols.TABLE_CURRENT));

    private AmpacityFormulas() {}

    /** The formula that uses the factors there are. */
    static Formula of(boolean warm, boolean bundled) {
        if (warm) {
            return bundled ? WARM_AND_BUNDLED : WARM;
        }
        return bundled ? BUNDLED : UNCHANGED;
    }

    /** The same with the reader's own factor behind it, if there is one. */
    static Formula of(boolean warm, boolean bundled, boolean own) {
        Formula formula = of(warm, bundled);
        return own ? of(formula.body().times(AmpacitySymbols.OWN_FACTOR)) : formula;
    }

    private static Formula of(Expression body) {
        return new Formula(AmpacitySymbols.AMPACITY, body);
    }
}
