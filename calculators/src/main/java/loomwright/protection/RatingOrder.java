package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/**
 * Of two devices one behind the other, the one nearer to the load has to be rated below the other; else nobody can say which opens first.
 *
 * @source common practice
 */
public final class RatingOrder {
    private RatingOrder() {}

    /**
     * The finding that the order is wrong; null if it is right.
     *
     * @param near the device nearer to the load, as the start of a sentence
     * @param far the one before it, in the middle of a sentence
     */
    public static Finding wrong(String near, Quantity nearRating, String far, Quantity farRating) {
        if (!Comparison.atLeast(nearRating, farRating)) {
            return null;
        }
        return new Finding(
                Verdict.CAUTION,
                near + ", " + nearRating.text() + ", is not rated below " + far + ", " + farRating.text()
                        + ", before it: either may open first, and then more goes dead than the fault.",
                nearRating, farRating, Source.commonPractice(),
                "Take a smaller rating for " + (near.startsWith("The ") ? "t" + near.substring(1) : near) + ", or a larger one before it that still guards all behind it.");
    }
}
