package loomwright.protection;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The letters and formulas of opening times. */
final class TimeSymbols {
    static final Symbol CURRENT = Symbol.of("I", "current", Dimension.CURRENT);
    static final Symbol RATING = Symbol.of("I", "n", "rating of the device", Dimension.CURRENT);
    static final Symbol SHARE = Symbol.of("p", "current as a share of the rating", Dimension.NUMBER);
    static final Symbol EARLIEST = Symbol.of("t", "1", "time before which it does not open", Dimension.TIME);
    static final Symbol LATEST = Symbol.of("t", "2", "time by which it has opened", Dimension.TIME);

    static final Formula SHARE_OF_RATING = new Formula(SHARE, CURRENT.over(RATING));
    static final Formula TURNED_OVER = new Formula(SHARE, RATING.over(CURRENT));
    static final Formula EXCESS_ONLY = new Formula(SHARE, CURRENT.over(RATING).minus(Expression.number(1)));

    /** A time read in the wrong place. */
    static final Formula READ_AS_EARLIEST = new Formula(EARLIEST, EARLIEST);
    static final Formula READ_AS_LATEST = new Formula(LATEST, LATEST);

    private TimeSymbols() {}
}
