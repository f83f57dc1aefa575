package loomwright.worked;

import loomwright.quantity.Quantity;
import loomwright.source.Source;

/**
 * One check of a result. Where a figure is held against a limit, {@link Comparison} makes it.
 *
 * @param verdict what the check found
 * @param sentence what was checked, with the figure and the limit in it
 * @param figure the figure checked
 * @param limit the limit it was held against, or null if there is no limit in numbers
 * @param source where the limit comes from
 * @param advice what to do; empty if the check passed
 * @param missing the figure without which it is not known; null with every other verdict
 */
public record Finding(
        Verdict verdict, Sentence sentence, Quantity figure, Quantity limit, Source source, Sentence advice, MissingFigure missing) {
    /**
     * @throws IllegalArgumentException if a figure from memory or an invented one would pass the check, or if it is not known for no reason
     */
    public Finding {
        if (!source.standing().mayPass() && verdict == Verdict.PASSED) {
            throw new IllegalArgumentException("a figure " + source.standing().words() + " cannot pass a check: " + sentence);
        }
        if ((missing != null) != (verdict == Verdict.NOT_KNOWN)) {
            throw new IllegalArgumentException("what is not known names the figure that is missing, and nothing else does: " + sentence);
        }
    }

    public Finding(Verdict verdict, Sentence sentence, Quantity figure, Quantity limit, Source source, Sentence advice) {
        this(verdict, sentence, figure, limit, source, advice, null);
    }

    public Finding(Verdict verdict, String words, Quantity figure, Quantity limit, Source source, String remedy) {
        this(verdict, Sentence.of(words), figure, limit, source, Sentence.of(remedy));
    }

    /** A check that could not be made. */
    public static Finding notKnown(String words, Quantity figure, Source source, MissingFigure missing) {
        return notKnown(Sentence.of(words), figure, source, missing);
    }

    /** The same, with words for when they are read. */
    public static Finding notKnown(Sentence sentence, Quantity figure, Source source, MissingFigure missing) {
        return notKnown(sentence, figure, null, source, missing);
    }

    /** What would keep a limit if something that it rests on were sure. */
    static Finding notKnown(Sentence sentence, Quantity figure, Quantity limit, Source source, MissingFigure missing) {
        return new Finding(
                Verdict.NOT_KNOWN, sentence, figure, limit, source, Sentence.later(() -> "Find the " + missing.name() + ": " + missing.where() + "."), missing);
    }

    /** What was checked, with the figure and the limit in the sentence. */
    public String words() {
        return sentence.text();
    }

    /** What to do; empty if the check passed. */
    public String remedy() {
        return advice.text();
    }
}
