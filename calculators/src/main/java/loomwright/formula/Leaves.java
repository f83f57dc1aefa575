package loomwright.formula;

import loomwright.quantity.Quantity;

/** Decides what stands in the place of a letter: the letter itself, or its quantity. */
interface Leaves {
    /** The quantity to write for {@code symbol}, or null to write the letter. */
    Quantity quantity(Symbol symbol);

    Leaves LETTERS = symbol -> null;
}
