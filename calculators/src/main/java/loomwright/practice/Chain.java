package loomwright.practice;

import java.util.List;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.worked.ConversionStep;
import loomwright.worked.Field;
import loomwright.worked.FormulaStep;
import loomwright.worked.Step;
import loomwright.worked.TableStep;
import loomwright.worked.Working;

/**
 * Which step of a working uses the figure of which earlier one.
 *
 * <p>A calculator hands the result of a step on as the same object, so most links are found by identity. A figure that was brought to
 * another unit on the way is found by its letter and value.
 */
final class Chain {
    private static final int NONE = -1;
    private static final double HAIR = 1e-12;

    private final Working working;

    Chain(Working working) {
        this.working = working;
    }

    /**
     * What a step gives if earlier steps gave other figures.
     *
     * @param figures for each step the figure to use in place of its own, or null to keep its own
     * @return null if the step uses none of these figures, or has no finite value with them
     */
    Quantity again(int at, Quantity[] figures) {
        Step step = working.steps().get(at);
        if (step instanceof ConversionStep conversion) {
            int origin = origin(at, null, conversion.from());
            return origin == NONE || figures[origin] == null ? null : figures[origin].in(conversion.result().unit());
        }
        if (!(step instanceof FormulaStep formula)) {
            return null;
        }
        Values values = values(at, formula, figures);
        Quantity result = values == null ? null : formula.formula().value(values, formula.result().unit());
        return result == null || Double.isNaN(result.value()) || Math.abs(result.value()) > 1e12 ? null : result;
    }

    /** The numbers of a formula with those of earlier steps exchanged; null if none is. */
    Values values(int at, FormulaStep step, Quantity[] figures) {
        Values values = step.values();
        boolean any = false;
        for (Symbol symbol : letters(step)) {
            int origin = origin(at, symbol, step.values().of(symbol));
            if (origin != NONE && figures[origin] != null) {
                values = values.with(symbol, figures[origin].in(step.values().of(symbol).unit()));
                any = true;
            }
        }
        return any ? values : null;
    }

    /** Whether a step uses a figure of a step, directly. */
    boolean uses(int at, int earlier) {
        Quantity[] figures = new Quantity[working.steps().size()];
        figures[earlier] = working.steps().get(earlier).result();
        return figures[earlier] != null && again(at, figures) != null;
    }

    private static List<Symbol> letters(FormulaStep step) {
        List<Symbol> all = step.formula().symbols();
        return all.subList(1, all.size());
    }

    /** The latest step before {@code at} that gave this figure. */
    private int origin(int at, Symbol symbol, Quantity used) {
        List<Step> steps = working.steps();
        int byLetter = NONE;
        int byValue = NONE;
        for (int i = at - 1; i >= 0; i--) {
            Quantity result = steps.get(i).result();
            if (result == used) {
                return i;
            }
            if (result != null && isSame(result, used)) {
                boolean letter = symbol != null && symbol.equals(letterOf(steps.get(i)));
                byLetter = letter && byLetter == NONE ? i : byLetter;
                byValue = byValue == NONE ? i : byValue;
            }
        }
        return byLetter != NONE || isEntered(used) ? byLetter : byValue;
    }

    private static Symbol letterOf(Step step) {
        if (step instanceof FormulaStep formula) {
            return formula.formula().subject();
        }
        return step instanceof TableStep table ? table.symbol() : null;
    }

    private boolean isEntered(Quantity used) {
        for (Field field : working.description().fields()) {
            Quantity entered = working.entries().quantity(field.key());
            if (entered != null && isSame(entered, used)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isSame(Quantity one, Quantity other) {
        return one.dimension().equals(other.dimension()) && Math.abs(one.base() - other.base()) <= HAIR * Math.abs(other.base());
    }
}
