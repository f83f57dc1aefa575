package loomwright.practice;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.worked.Agreement;
import loomwright.worked.ChoiceStep;
import loomwright.worked.ConversionStep;
import loomwright.worked.FormulaStep;
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
        Chain chain = new Chain(working);
        List<MendedWorking> all = new ArrayList<>();
        for (Slip slip : working.slips()) {
            int at = Spoilt.place(working, slip);
            // Nobody writes "I = 1000 × I"; such a slip is known when it is made, and no step to mend.
            boolean ofItself = slip.formula().symbols().lastIndexOf(slip.formula().subject()) > 0;
            boolean plain = at >= 0 && !Agreement.agrees(slip.value(), working.steps().get(at).result());
            if (plain && working.steps().size() > 1 && !ofItself) {
                FormulaStep earlier = earlier(working, chain, slip, at);
                FormulaStep spoilt = earlier != null ? earlier : spoilt((FormulaStep) working.steps().get(at), slip.formula(), slip.values(), slip.value());
                all.add(with(working, slip, earlier == null ? at : step(working, earlier), spoilt));
            }
        }
        return all;
    }

    /** One of them, or null if there is none; rather one from which something follows. */
    public static MendedWorking of(Working working, int seed) {
        List<MendedWorking> all = all(working);
        List<MendedWorking> leading = new ArrayList<>();
        for (MendedWorking mended : all) {
            if (mended.isFollowed(working)) {
                leading.add(mended);
            }
        }
        List<MendedWorking> among = leading.isEmpty() ? all : leading;
        return among.isEmpty() ? null : among.get(new Seeds(seed).below(among.size()));
    }

    /** Whether a later step has another figure for it. */
    private boolean isFollowed(Working working) {
        for (int i = at + 1; i < steps.size(); i++) {
            if (steps.get(i) != working.steps().get(i)) {
                return true;
            }
        }
        return false;
    }

    /** The earlier step at which a person makes the slip: a factor left out there leads to the figure of the slip. Null if there is none. */
    private static FormulaStep earlier(Working working, Chain chain, Slip slip, int place) {
        for (int i = 0; i < place; i++) {
            if (working.steps().get(i) instanceof FormulaStep step && step.formula().symbols().size() == 2) {
                Symbol letter = step.formula().symbols().get(1);
                Quantity bare = step.values().of(letter);
                boolean alike = bare.dimension().equals(step.result().dimension());
                if (alike && !Agreement.agrees(bare, step.result()) && new Spoilt(working, chain, slip).explains(i, bare)) {
                    return spoilt(step, new Formula(step.formula().subject(), letter), step.values(), bare);
                }
            }
        }
        return null;
    }

    /** The place of the step that a spoilt one stands for. */
    private static int step(Working working, FormulaStep spoilt) {
        for (int i = 0; i < working.steps().size(); i++) {
            boolean same = working.steps().get(i) instanceof FormulaStep step && step.formula().subject().equals(spoilt.formula().subject());
            if (same && working.steps().get(i).words().equals(spoilt.words())) {
                return i;
            }
        }
        throw new IllegalStateException("no step " + spoilt.words());
    }

    private static FormulaStep spoilt(FormulaStep step, Formula formula, Values values, Quantity figure) {
        return new FormulaStep(step.words(), formula, values, figure.in(step.result().unit()), step.why(), step.source());
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

    private static MendedWorking with(Working working, Slip slip, int at, FormulaStep spoilt) {
        Chain chain = new Chain(working);
        Quantity[] figures = new Quantity[working.steps().size()];
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < working.steps().size(); i++) {
            Step step = working.steps().get(i);
            if (i > at && step instanceof ChoiceStep) {
                break;
            }
            if (i == at) {
                figures[i] = spoilt.result();
                step = spoilt;
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
