package loomwright.protection;

import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The formulas of breaking capacity. */
final class BreakingFormulas {
    static final Symbol PROSPECTIVE = Symbol.of("I", "f", "highest prospective current", Dimension.CURRENT);
    static final Symbol CAPACITY = Symbol.of("I", "cu", "breaking capacity of the device", Dimension.CURRENT);
    static final Symbol WANTED = Symbol.of("I", "w", "breaking capacity that the rule set asks for", Dimension.CURRENT);
    static final Symbol CRANKING = Symbol.of("I", "cca", "cold-cranking current", Dimension.CURRENT);
    static final Symbol SHARE = Symbol.of("u", "prospective current as a share of the breaking capacity", Dimension.NUMBER);

    static final Formula LOADING = new Formula(SHARE, PROSPECTIVE.over(CAPACITY));
    static final Formula TURNED_OVER = new Formula(SHARE, CAPACITY.over(PROSPECTIVE));
    static final Formula CRANKING_SHARE = new Formula(SHARE, CRANKING.over(CAPACITY));
    static final Formula CRANKING_WANTED = new Formula(WANTED, CRANKING);
    static final Formula OTHER_COLUMN = new Formula(WANTED, CAPACITY);

    private BreakingFormulas() {}
}
