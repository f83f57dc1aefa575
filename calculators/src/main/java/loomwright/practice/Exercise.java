package loomwright.practice;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.worked.Agreement;
import loomwright.worked.ConversionStep;
import loomwright.worked.FormulaStep;
import loomwright.worked.Slip;
import loomwright.worked.Step;
import loomwright.worked.Working;

/** A working whose steps a reader does. Steps that compute can be blanks; what is read from a table or chosen from a series stays. */
public final class Exercise {
    private static final int MOST_REASONS = 4;

    private final Working working;
    private final Chain chain;
    private final List<Integer> blanks = new ArrayList<>();

    public Exercise(Working working) {
        this.working = working;
        this.chain = new Chain(working);
        for (int i = 0; i < working.steps().size(); i++) {
            Step step = working.steps().get(i);
            if (step instanceof FormulaStep || step instanceof ConversionStep && usesABlank(i)) {
                blanks.add(i);
            }
        }
    }

    public Working working() {
        return working;
    }

    /** The steps that can be blanks, in order, counted from zero. */
    public List<Integer> blanks() {
        return List.copyOf(blanks);
    }

    /** The last {@code count} of them. */
    public List<Integer> last(int count) {
        List<Integer> last = new ArrayList<>();
        for (int i = Math.max(0, blanks.size() - count); i < blanks.size(); i++) {
            last.add(blanks.get(i));
        }
        return last;
    }

    /** A figure brought to another unit gives the figure away, so that step goes with the one it uses. */
    private boolean usesABlank(int at) {
        for (int blank : blanks) {
            if (chain.uses(at, blank)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Checks a figure for a blank.
     *
     * @param typed what the reader wrote; a bare number is in the unit of the step
     * @param own the reader's own figures of earlier steps, by step; null where there is none
     */
    public BlankCheck check(int at, String typed, Quantity[] own) {
        Quantity right = working.steps().get(at).result();
        Unit unit = right.unit();
        if (typed.isBlank()) {
            return new BlankCheck(BlankCheck.Kind.UNREADABLE, "This blank is empty: enter a number" + in(unit) + ".", null);
        }
        QuantityText.Reading reading = QuantityText.read(typed, unit);
        if (reading.quantity() == null) {
            return new BlankCheck(BlankCheck.Kind.UNREADABLE, "Your figure " + reading.fault() + ". Enter a number" + in(unit) + ".", null);
        }
        Quantity figure = reading.quantity();
        if (!figure.dimension().equals(right.dimension())) {
            String wrongKind = "Your figure is in " + named(figure.unit()) + ", but this step gives " + named(unit) + ".";
            return new BlankCheck(BlankCheck.Kind.UNIT, wrongKind, null);
        }
        Quantity followed = chain.again(at, wrongOnes(at, own));
        if (followed != null && Agreement.agrees(figure, followed) && Agreement.isAnother(figure, followed, right)) {
            return new BlankCheck(
                    BlankCheck.Kind.CREDITED,
                    "Right method. The figure differs only because it starts from your own figure of " + steps(at, own)
                            + ". Put that right, then this one follows.",
                    figure);
        }
        Slip slip = slip(at, figure, right);
        if (slip != null) {
            return new BlankCheck(
                    BlankCheck.Kind.SLIP, "This number comes from a known slip: " + slip.name() + ". " + slip.words(), figure);
        }
        return Agreement.agrees(figure, right) ? new BlankCheck(BlankCheck.Kind.RIGHT, "Right.", figure) : unknown(figure, right);
    }

    /** The slip that explains a figure best: one made at this step, then one on the way to a later one, then one that was made before. */
    private Slip slip(int at, Quantity figure, Quantity right) {
        for (boolean before : new boolean[] {false, true}) {
            for (Slip slip : working.slips()) {
                Spoilt each = new Spoilt(working, chain, slip);
                Quantity there = each.figure(at);
                boolean explained = each.isMadeBefore(at) == before && each.explains(at, figure);
                if (explained && Agreement.isAnother(figure, there == null ? right : there, right)) {
                    return slip;
                }
            }
        }
        return null;
    }

    private BlankCheck unknown(Quantity figure, Quantity right) {
        String stray = Stray.words(working, right, figure);
        if (!stray.isEmpty()) {
            return new BlankCheck(stray.startsWith("The digits") ? BlankCheck.Kind.UNIT : BlankCheck.Kind.DIFFERS, stray, figure);
        }
        return new BlankCheck(
                BlankCheck.Kind.DIFFERS, "This is not what the step gives, and it is none of the slips we know. Read the step again.", figure);
    }

    /** The reader's figures that are not those of the working. */
    private Quantity[] wrongOnes(int at, Quantity[] own) {
        Quantity[] wrong = new Quantity[working.steps().size()];
        for (int i = 0; i < at; i++) {
            boolean isWrong = own[i] != null && !Agreement.agrees(own[i], working.steps().get(i).result());
            wrong[i] = isWrong ? own[i] : null;
        }
        return wrong;
    }

    private String steps(int at, Quantity[] own) {
        Quantity[] wrong = wrongOnes(at, own);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < at; i++) {
            if (wrong[i] != null && chain.uses(at, i)) {
                text.append(text.length() == 0 ? "step " : " and step ").append(i + 1);
            }
        }
        return text.toString();
    }

    /** What to choose from when asked why a step is taken: its own reason among those of other steps. One alone if there is no other. */
    public List<String> reasons(int at, int seed) {
        Seeds seeds = new Seeds(seed * 31 + at);
        List<String> others = new ArrayList<>();
        String own = working.steps().get(at).why();
        for (Step step : working.steps()) {
            if (!step.why().equals(own) && !others.contains(step.why())) {
                others.add(step.why());
            }
        }
        while (others.size() > MOST_REASONS - 1) {
            others.remove(seeds.below(others.size()));
        }
        others.add(seeds.below(others.size() + 1), own);
        return others;
    }

    private static String in(Unit unit) {
        return unit.symbol().isEmpty() ? "" : " in " + unit.symbol();
    }

    private static String named(Unit unit) {
        return unit.symbol().isEmpty() ? "a plain number" : unit.spoken();
    }
}
