package loomwright.supply;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The formulas of a panel's headroom, right and wrong. */
final class HeadroomFormulas {
    static final Symbol PRESENT = Symbol.of("I", "p", "present loads added up", Dimension.CURRENT);
    static final Symbol DIVERSITY = Symbol.of("g", "share of the present loads that draw together", Dimension.NUMBER);
    static final Symbol NOW = Symbol.of("I", "now", "current through the feed now", Dimension.CURRENT);
    static final Symbol NEW = Symbol.of("I", "new", "current of the new load", Dimension.CURRENT);
    static final Symbol AFTER = Symbol.of("I", "after", "current through the feed afterwards", Dimension.CURRENT);
    static final Symbol LIMIT = Symbol.of("I", "lim", "tightest limit", Dimension.CURRENT);
    static final Symbol PANEL = Symbol.of("I", "panel", "limit of the panel", Dimension.CURRENT);
    static final Symbol FUSE = Symbol.of("I", "n", "rating of the feed's device", Dimension.CURRENT);
    static final Symbol LOADING = Symbol.of("f", "share of its rating a device may carry for hours", Dimension.NUMBER);
    static final Symbol FUSE_LIMIT = Symbol.of("I", "f", "current the feed's device may carry for hours", Dimension.CURRENT);
    static final Symbol HEADROOM_NOW = Symbol.of("I", "r", "headroom now", Dimension.CURRENT);
    static final Symbol HEADROOM = Symbol.of("I", "h", "headroom afterwards", Dimension.CURRENT);
    static final Symbol SHARE = Symbol.of("a", "share of the limit in use afterwards", Dimension.NUMBER);
    static final Symbol START = Symbol.of("I", "s", "extra current at a start", Dimension.CURRENT);
    static final Symbol AT_START = Symbol.of("I", "start", "current at the moment of the start", Dimension.CURRENT);

    static final Formula NOW_TOGETHER = new Formula(NOW, DIVERSITY.times(PRESENT));
    static final Formula AFTERWARDS = new Formula(AFTER, NOW.plus(NEW));
    static final Formula FUSE_FOR_HOURS = new Formula(FUSE_LIMIT, LOADING.times(FUSE));
    static final Formula ROOM_NOW = new Formula(HEADROOM_NOW, LIMIT.minus(NOW));
    static final Formula ROOM_AFTERWARDS = new Formula(HEADROOM, LIMIT.minus(AFTER));
    static final Formula SHARE_IN_USE = new Formula(SHARE, AFTER.over(LIMIT));
    static final Formula CURRENT_AT_START = new Formula(AT_START, AFTER.plus(START));

    static final Formula NEW_LEFT_OUT = new Formula(AFTER, NOW);
    static final Formula DIVERSITY_LEFT_OUT = new Formula(AFTER, PRESENT.plus(NEW));
    static final Formula DIVERSITY_ON_ALL = new Formula(AFTER, DIVERSITY.times(PRESENT.plus(NEW)));
    static final Formula DIVERSITY_TURNED_OVER = new Formula(AFTER, PRESENT.over(DIVERSITY).plus(NEW));
    static final Formula START_FOR_STEADY = new Formula(AFTER, NOW.plus(NEW).plus(START));
    static final Formula ROOM_BEFORE = new Formula(HEADROOM, LIMIT.minus(NOW));
    static final Formula ROOM_OF_PANEL = new Formula(HEADROOM, PANEL.minus(AFTER));
    static final Formula SHARE_TURNED_OVER = new Formula(SHARE, LIMIT.over(AFTER));

    private HeadroomFormulas() {}

    /** The present loads added up; {@code ways} holds at least one. */
    static Formula sum(Iterable<Symbol> ways) {
        Expression sum = null;
        for (Symbol way : ways) {
            sum = sum == null ? way : sum.plus(way);
        }
        return new Formula(PRESENT, sum);
    }
}
