package loomwright.turned;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.worked.QuantityField;
import loomwright.worked.Step;

/**
 * The answer to a question turned round: what an entry may be, or has to be, for a result to be as wanted.
 *
 * @param kind how it was found
 * @param unknown the entry
 * @param wish what is wanted
 * @param answer the figure, rounded to the side on which the wish is met; null if there is none
 * @param steps the working turned round; empty unless it was worked out
 * @param attempts figures that were tried; the last that passes and the first that does not
 * @param words the answer, or why there is none, in sentences
 */
public record Turned(
        Kind kind, QuantityField unknown, Wish wish, Quantity answer, List<Step> steps, List<Attempt> attempts, String words) {

    /** How an answer was found. */
    public enum Kind {
        /** Each formula was turned round. */
        WORKED_OUT,
        /** Found by trying, to as many digits as are shown. */
        TRIED,
        /** What it gives jumps, or comes in sizes: the last that passes and the first that does not. */
        SIZES,
        /** Every figure that the field takes passes. */
        ALL_PASS,
        /** There is no answer. */
        NONE
    }
}
