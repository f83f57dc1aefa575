package loomwright.worked;

import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.source.Standing;

/**
 * One check of a result.
 *
 * @param verdict what the check found
 * @param words what was checked, with the figure and the limit in the sentence
 * @param figure the figure checked
 * @param limit the limit it was held against, or null if there is no limit in numbers
 * @param source where the limit comes from
 * @param remedy what to do; empty if the check passed
 */
public record Finding(Verdict verdict, String words, Quantity figure, Quantity limit, Source source, String remedy) {
    /**
     * @throws IllegalArgumentException if a figure from memory would decide the check
     */
    public Finding {
        if (source.standing() == Standing.FROM_MEMORY && verdict != Verdict.CAUTION) {
            throw new IllegalArgumentException("a limit from memory cannot decide: " + words);
        }
    }
}
