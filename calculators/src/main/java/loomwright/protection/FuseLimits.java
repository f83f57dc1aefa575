package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.worked.Comparison;

/**
 * Between what ratings a fuse-link has to lie.
 *
 * @param least what the load asks for
 * @param highest what the conductor allows
 */
record FuseLimits(Quantity least, Quantity highest) {
    boolean hold(Quantity rating) {
        return reaches(rating, least) && reaches(highest, rating);
    }

    boolean leaveRoom() {
        return reaches(highest, least);
    }

    /** Whether one current is at least another; a hair of rounding is let through. */
    static boolean reaches(Quantity current, Quantity other) {
        return Comparison.atLeast(current, other);
    }
}
