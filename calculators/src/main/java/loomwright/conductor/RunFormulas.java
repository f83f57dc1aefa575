package loomwright.conductor;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;
import loomwright.quantity.Units;
import loomwright.worked.NamedFormula;

/** The formulas that turn a drop allowed into a size. */
final class RunFormulas {
    static final Symbol LIMIT = Symbol.of("U", "lim", "highest drop allowed, out and back", Dimension.VOLTAGE);
    static final Symbol SHARE = Symbol.of("u", "lim", "highest drop allowed as a share of the supply voltage", Dimension.NUMBER);
    static final Symbol HIGHEST = Symbol.of("r", "max", "highest resistance of one metre", Dimension.RESISTANCE_PER_LENGTH);
    static final Symbol LEAST = Symbol.of("S", "min", "least cross-section", Dimension.AREA);
    static final Symbol CHOSEN = Symbol.of("S", "size chosen", Dimension.AREA);
    static final Symbol FUSE_SHARE = Symbol.of("k", "f", "share of the ampacity that a fuse-link may be rated at", Dimension.NUMBER);
    static final Symbol FUSE_LIMIT = Symbol.of("I", "f", "highest rating of a fuse-link on it", Dimension.CURRENT);

    static final Formula LIMIT_IN_VOLTS = new Formula(LIMIT, SHARE.times(Symbols.SUPPLY_VOLTAGE));
    static final Formula HIGHEST_PER_METRE = new Formula(HIGHEST, LIMIT.over(Symbols.CURRENT.times(Symbols.CIRCUIT_LENGTH)));
    static final Formula LEAST_AREA = leastArea(1);
    static final Formula FUSE_ALLOWED = new Formula(FUSE_LIMIT, FUSE_SHARE.times(AmpacitySymbols.AMPACITY));

    /** A slip: another size taken for the one that passes. */
    static final Formula OTHER_SIZE = new Formula(CHOSEN, CHOSEN);

    static final List<NamedFormula> NAMED = List.of(
            new NamedFormula("highest-per-metre", HIGHEST_PER_METRE),
            new NamedFormula("least-area", LEAST_AREA),
            new NamedFormula("drop", DropFormulas.DROP),
            new NamedFormula("fuse-limit", FUSE_ALLOWED));

    private RunFormulas() {}

    /** A slip: the length counted {@code times} times. */
    static Formula highestPerMetre(double times) {
        return new Formula(HIGHEST, LIMIT.over(Symbols.CURRENT.times(Expression.number(times)).times(Symbols.CIRCUIT_LENGTH)));
    }

    /** The small-craft formula turned to the area, with the length counted {@code times} times: once is right. */
    static Formula leastArea(double times) {
        Expression constant = Expression.fixed(DropFormulas.MIL_FOOT.quantity("value", Units.OHM_CIRCULAR_MIL_PER_FOOT));
        Expression length = times == 1 ? Symbols.CIRCUIT_LENGTH : Expression.number(times).times(Symbols.CIRCUIT_LENGTH);
        return new Formula(LEAST, constant.times(Symbols.CURRENT).times(length).over(LIMIT));
    }
}
