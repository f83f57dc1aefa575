package loomwright.turned;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Formula;
import loomwright.formula.Solved;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.worked.ConversionStep;
import loomwright.worked.FormulaStep;
import loomwright.worked.Result;
import loomwright.worked.Step;
import loomwright.worked.TableStep;
import loomwright.worked.Working;

/**
 * The way back through a working, from a result to the entry that is the unknown, each formula turned round.
 *
 * <p>Two workings that differ in that entry alone show what depends on it: the letters whose numbers differ. The way exists where each
 * formula on it has one such letter, and has it once.
 */
final class Way {
    private static final double HAIR = 1e-12;

    private final Working one;
    private final Working other;
    private final String field;
    private final List<Step> turned = new ArrayList<>();
    private final List<Step> known = new ArrayList<>();

    private Way(Working one, Working other, String field) {
        this.one = one;
        this.other = other;
        this.field = field;
    }

    /** The steps from {@code wanted} back to the field; null if there is no such way. */
    static List<Step> back(Working one, Working other, String field, Result from, Quantity wanted) {
        if (one.steps().size() != other.steps().size()) {
            return null;
        }
        Way way = new Way(one, other, field);
        int at = way.origin(one.steps().size(), from.quantity(), other.result(from.output().key()).quantity(), null);
        Quantity found = at < 0 ? null : way.through(at, wanted);
        if (found == null) {
            return null;
        }
        List<Step> steps = new ArrayList<>(way.known);
        steps.addAll(way.turned);
        return steps;
    }

    /** The figure of the field if the step at that place has to give {@code wanted}; null if there is no way. */
    private Quantity through(int at, Quantity wanted) {
        Step step = one.steps().get(at);
        if (step instanceof ConversionStep conversion) {
            return beyond(at, null, conversion.from(), ((ConversionStep) other.steps().get(at)).from(), wanted);
        }
        if (!(step instanceof FormulaStep formula) || !(other.steps().get(at) instanceof FormulaStep twin)
                || !formula.formula().equals(twin.formula())) {
            return null;
        }
        Symbol unknown = onlyOneThatDiffers(formula, twin);
        Formula solved = unknown == null ? null : Solved.of(formula.formula(), unknown);
        if (solved == null) {
            return null;
        }
        showWhatIsKnown(at, formula, unknown);
        Values values = formula.values().with(formula.formula().subject(), wanted.in(formula.result().unit()));
        Quantity usual = formula.values().of(unknown);
        Quantity found = solved.value(values, usual.unit());
        turned.add(new FormulaStep(
                "Turn the formula round for the " + unknown.meaning(), solved, values, found,
                "It was " + formula.formula().symbolicText() + ": what is done to the letter is undone on both sides.", formula.source()));
        return beyond(at, unknown, usual, twin.values().of(unknown), found);
    }

    /** On from a figure that a step used: to the field itself, or to the step that gave it. */
    private Quantity beyond(int at, Symbol letter, Quantity used, Quantity usedByTwin, Quantity wanted) {
        Quantity entry = one.entries().quantity(field);
        if (isSame(used, entry) && isSame(usedByTwin, other.entries().quantity(field))) {
            return inTheUnitOf(entry, wanted);
        }
        int origin = origin(at, used, usedByTwin, letter);
        return origin < 0 ? null : through(origin, wanted);
    }

    private Quantity inTheUnitOf(Quantity entry, Quantity wanted) {
        if (entry.unit() == wanted.unit()) {
            return wanted;
        }
        Quantity result = wanted.in(entry.unit());
        turned.add(new ConversionStep("Turn it into " + entry.unit().spoken(), wanted, result, "That is the unit of the entry."));
        return result;
    }

    /** The one letter of a formula whose number depends on the field; null if there are more. */
    private static Symbol onlyOneThatDiffers(FormulaStep step, FormulaStep twin) {
        Symbol found = null;
        for (Symbol letter : letters(step)) {
            if (!isSame(step.values().of(letter), twin.values().of(letter))) {
                if (found != null) {
                    return null;
                }
                found = letter;
            }
        }
        return found;
    }

    private static List<Symbol> letters(FormulaStep step) {
        List<Symbol> all = step.formula().symbols();
        return all.subList(1, all.size());
    }

    /** The steps that give the other letters, which do not depend on the field, as the working has them. */
    private void showWhatIsKnown(int at, FormulaStep formula, Symbol unknown) {
        for (Symbol letter : letters(formula)) {
            if (!letter.equals(unknown)) {
                Quantity figure = formula.values().of(letter);
                show(origin(at, figure, figure, letter));
            }
        }
    }

    private void show(int at) {
        if (at < 0 || known.contains(one.steps().get(at))) {
            return;
        }
        Step step = one.steps().get(at);
        if (step instanceof ConversionStep conversion) {
            show(origin(at, conversion.from(), conversion.from(), null));
        } else if (step instanceof FormulaStep formula) {
            showWhatIsKnown(at, formula, null);
        }
        known.add(step);
    }

    /** The latest step before {@code before} that gives both figures; one with that letter first; −1 if none does. */
    private int origin(int before, Quantity figure, Quantity figureOfTwin, Symbol letter) {
        int found = -1;
        for (int i = before - 1; i >= 0; i--) {
            Quantity gives = one.steps().get(i).result();
            Quantity twinGives = other.steps().get(i).result();
            if (isSame(gives, figure) && isSame(twinGives, figureOfTwin)) {
                if (letter == null || gives == figure || letter.equals(letterOf(one.steps().get(i)))) {
                    return i;
                }
                found = found < 0 ? i : found;
            }
        }
        return found;
    }

    private static Symbol letterOf(Step step) {
        if (step instanceof FormulaStep formula) {
            return formula.formula().subject();
        }
        return step instanceof TableStep table ? table.symbol() : null;
    }

    private static boolean isSame(Quantity first, Quantity second) {
        return first != null && second != null && first.dimension().equals(second.dimension())
                && Math.abs(first.base() - second.base()) <= HAIR * Math.abs(second.base());
    }
}
