package loomwright.practice;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.worked.ChoiceStep;
import loomwright.worked.ConversionStep;
import loomwright.worked.FormulaStep;
import loomwright.worked.Result;
import loomwright.worked.Slip;
import loomwright.worked.Step;
import loomwright.worked.Working;

/**
 * A working with one known slip in it, for the reader to mend. The step that the slip spoils shows the mistaken formula, and every later
 * step follows from its figure.
 *
 * @param steps the steps with the slip in them; they end before a choice that would have to be made again
 * @param at the step with the slip
 * @param slip the slip
 */
public record MendedWorking(List<Step> steps, int at, Slip slip) {

    /** Every working that can be made from {@code working} by one of its slips; empty if none of them fits a step. */
    public static List<MendedWorking> all(Working working) {
        List<MendedWorking> all = new ArrayList<>();
        for (Slip slip : working.slips()) {
            int at = place(working, slip);
            if (at >= 0 && working.steps().size() > 1) {
                all.add(with(working, slip, at));
            }
        }
        return all;
    }

    /** One of them, or null if there is none. */
    public static MendedWorking of(Working working, int seed) {
        List<MendedWorking> all = all(working);
        return all.isEmpty() ? null : all.get(new Seeds(seed).below(all.size()));
    }

    /** The names to choose from: that of the slip among those of others. */
    public List<String> names(Working working, int seed) {
        Seeds seeds = new Seeds(seed + 7);
        List<String> others = new ArrayList<>();
        for (Slip other : working.slips()) {
            if (!other.name().equals(slip.name()) && !others.contains(other.name())) {
                others.add(other.name());
            }
        }
        while (others.size() > 3) {
            others.remove(seeds.below(others.size()));
        }
        others.add(seeds.below(others.size() + 1), slip.name());
        return others;
    }

    /** The step whose figure the slip spoils: it gives the answer of the slip under the same letter. −1 if there is none. */
    static int place(Working working, Slip slip) {
        Result result = working.result(slip.output().key());
        for (int i = 0; result != null && i < working.steps().size(); i++) {
            boolean sameLetter = working.steps().get(i) instanceof FormulaStep step
                    && step.formula().subject().equals(slip.formula().subject());
            if (sameLetter && isSame(working.steps().get(i).result(), result.quantity())) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isSame(Quantity one, Quantity other) {
        return one.dimension().equals(other.dimension()) && Math.abs(one.base() - other.base()) <= 1e-9 * Math.abs(other.base());
    }

    private static MendedWorking with(Working working, Slip slip, int at) {
        Chain chain = new Chain(working);
        Quantity[] figures = new Quantity[working.steps().size()];
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < working.steps().size(); i++) {
            Step step = working.steps().get(i);
            if (i > at && step instanceof ChoiceStep) {
                break;
            }
            if (i == at) {
                figures[i] = slip.value().in(step.result().unit());
                step = new FormulaStep(step.words(), slip.formula(), slip.values(), figures[i], step.why(), ((FormulaStep) step).source());
            } else if (i > at) {
                figures[i] = chain.again(i, figures);
                step = figures[i] == null ? step : follows(chain, i, step, figures);
            }
            steps.add(step);
        }
        return new MendedWorking(List.copyOf(steps), at, slip);
    }

    private static Step follows(Chain chain, int at, Step step, Quantity[] figures) {
        if (step instanceof FormulaStep formula) {
            Values values = chain.values(at, formula, figures);
            return new FormulaStep(step.words(), formula.formula(), values, figures[at], step.why(), formula.source());
        }
        ConversionStep conversion = (ConversionStep) step;
        return new ConversionStep(step.words(), figures[at].in(conversion.from().unit()), figures[at], step.why());
    }
}
