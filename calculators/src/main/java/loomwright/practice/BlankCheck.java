package loomwright.practice;

import loomwright.quantity.Quantity;

/**
 * What a reader's figure for a blank is worth.
 *
 * @param kind what came of it
 * @param words the reply, in full sentences; does not give the right figure away
 * @param figure the figure as it was read, or null if it could not be
 */
public record BlankCheck(Kind kind, String words, Quantity figure) {
    /** What came of a check. */
    public enum Kind {
        /** The figure of the working, but for rounding. */
        RIGHT,
        /** The right method, on the reader's own wrong figure of an earlier step. */
        CREDITED,
        /** What a known slip gives. */
        SLIP,
        /** The right number with another unit. */
        UNIT,
        /** Another figure. */
        DIFFERS,
        /** No figure of the kind asked for. */
        UNREADABLE
    }

    /** Whether the step can be left behind. */
    public boolean isDone() {
        return kind == Kind.RIGHT || kind == Kind.CREDITED;
    }
}
