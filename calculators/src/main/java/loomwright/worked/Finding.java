package loomwright.worked;

import loomwright.quantity.Quantity;
import loomwright.source.Source;

/**
 * One check of a result. Where a figure is held against a limit, {@link Comparison} makes it.
 *
 * @param verdict what the check found
 * @param words what was checked, with the figure and the limit in the sentence
 * @param figure the figure checked
 * @param limit the limit it was held against, or null if there is no limit in numbers
 * @param source where the limit comes from
 * @param remedy what to do; empty if the check passed
 * @param missing the figure without which it is not known; null with every other verdict
 */
public record Finding(
        Verdict verdict, String words, Quantity figure, Quantity limit, Source source, String remedy, MissingFigure missing) {
    /**
     * @throws IllegalArgumentException if a figure from memory or an invented one would pass the check, or if it is not known for no reason
     */
    public Finding {
        if (!source.standing().mayPass() && verdict == Verdict.PASSED) {
            throw new IllegalArgumentException("a figure " + source.standing().words() + " cannot pass a check: " + words);
        }
        if ((missing != null) != (verdict == Verdict.NOT_KNOWN)) {
            throw new IllegalArgumentException("what is not known names the figure that is missing, and nothing else does: " + words);
        }
    }

    public Finding(Verdict verdict, String words, Quantity figure, Quantity limit, Source source, String remedy) {
        this(verdict, words, figure, limit, source, remedy, null);
    }

    /** A check that could not be made. */
    public static Finding notKnown(String words, Quantity figure, Source source, MissingFigure missing) {
        return new Finding(
                Verdict.NOT_KNOWN, words, figure, null, source, "Find the " + missing.name() + ": " + missing.where() + ".", missing);
    }
}
