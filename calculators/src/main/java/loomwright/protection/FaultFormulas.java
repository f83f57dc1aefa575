package loomwright.protection;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.worked.NamedFormula;

/** The formulas of fault current. */
final class FaultFormulas {
    static final Formula FROM_MAKER = new Formula(FaultSymbols.ONE_BATTERY, FaultSymbols.AT_REST.over(FaultSymbols.MAKERS_CURRENT));
    static final Formula SCALED = new Formula(
            FaultSymbols.ONE_BATTERY, FaultSymbols.PRINTED.times(FaultSymbols.PRINTED_CAPACITY).over(FaultSymbols.CAPACITY));
    static final Formula PARALLEL = new Formula(FaultSymbols.BATTERY, FaultSymbols.ONE_BATTERY.over(FaultSymbols.IN_PARALLEL));
    static final Formula CURRENT = new Formula(FaultSymbols.CURRENT, FaultSymbols.VOLTAGE.over(FaultSymbols.LOOP));
    static final Formula AT_TERMINALS = new Formula(FaultSymbols.CURRENT, FaultSymbols.VOLTAGE.over(FaultSymbols.BATTERY));

    static final List<Symbol> PARTS = List.of(
            FaultSymbols.BATTERY, FaultSymbols.FEED, FaultSymbols.BRANCH, FaultSymbols.FUSE_LINKS, FaultSymbols.JOINTS);

    static final List<NamedFormula> NAMED = List.of(
            new NamedFormula("current", CURRENT),
            new NamedFormula("loop", new Formula(FaultSymbols.LOOP, sum(PARTS))),
            new NamedFormula("in-parallel", PARALLEL),
            new NamedFormula("scaled-by-capacity", SCALED),
            new NamedFormula("from-short-circuit-current", FROM_MAKER));

    private FaultFormulas() {}

    /** The resistance of the loop, of the parts that there are. */
    static Formula loop(List<Symbol> parts) {
        return new Formula(FaultSymbols.LOOP, sum(parts));
    }

    /** The fault current with the parts of the loop written out, each of {@code counted} taken in {@code weight} times. */
    static Formula mistaken(List<Symbol> parts, List<Symbol> counted, double weight) {
        Expression loop = null;
        for (Symbol part : parts) {
            boolean plain = !counted.contains(part);
            if (plain || weight != 0) {
                Expression term = plain ? part : Expression.number(weight).times(part);
                loop = loop == null ? term : loop.plus(term);
            }
        }
        return loop == null ? null : new Formula(FaultSymbols.CURRENT, FaultSymbols.VOLTAGE.over(loop));
    }

    private static Expression sum(List<Symbol> parts) {
        Expression sum = parts.get(0);
        for (Symbol part : parts.subList(1, parts.size())) {
            sum = sum.plus(part);
        }
        return sum;
    }
}
