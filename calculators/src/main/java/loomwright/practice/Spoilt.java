package loomwright.practice;

import loomwright.quantity.Quantity;
import loomwright.worked.Agreement;
import loomwright.worked.FormulaStep;
import loomwright.worked.Result;
import loomwright.worked.Slip;
import loomwright.worked.Step;
import loomwright.worked.Working;

/** What becomes of the figures of a working once a slip is made in it. */
final class Spoilt {
    private final Working working;
    private final Chain chain;
    private final Slip slip;
    private final int place;
    private final Quantity[] figures;

    Spoilt(Working working, Chain chain, Slip slip) {
        this.working = working;
        this.chain = chain;
        this.slip = slip;
        this.place = place(working, slip);
        this.figures = new Quantity[working.steps().size()];
        if (place >= 0) {
            figures[place] = slip.value();
            follow(figures, place, figures.length - 1);
        }
    }

    /** The step whose figure the slip spoils: it gives the answer of the slip under the same letter. −1 if there is none. */
    static int place(Working working, Slip slip) {
        Result result = working.result(slip.output().key());
        for (int i = 0; result != null && i < working.steps().size(); i++) {
            boolean sameLetter = working.steps().get(i) instanceof FormulaStep step
                    && step.formula().subject().equals(slip.formula().subject());
            if (sameLetter && working.steps().get(i).result().isSame(result.quantity())) {
                return i;
            }
        }
        return -1;
    }

    boolean isMadeBefore(int at) {
        return place >= 0 && place < at;
    }

    /** What a step after the slip gives; null if nothing else than without it, or if the slip comes later. */
    Quantity figure(int at) {
        return figures[at];
    }

    /** What an answer becomes; null if nothing else than without the slip. */
    Quantity answer(Result result) {
        for (int i = figures.length - 1; i >= 0; i--) {
            Quantity own = working.steps().get(i).result();
            if (figures[i] != null && own != null && own.isSame(result.quantity())) {
                return figures[i];
            }
        }
        return null;
    }

    /** Whether {@code figure} at a step is what comes of the slip there, or what leads to the figure of the slip. */
    boolean explains(int at, Quantity figure) {
        if (place < at) {
            return figures[at] != null && Agreement.agrees(figure, figures[at]);
        }
        Quantity[] led = new Quantity[figures.length];
        led[at] = figure;
        follow(led, at, place);
        return led[place] != null && Agreement.agrees(led[place], slip.value());
    }

    private void follow(Quantity[] from, int at, int last) {
        for (int i = at + 1; i <= last; i++) {
            from[i] = chain.again(i, from);
        }
    }
}
