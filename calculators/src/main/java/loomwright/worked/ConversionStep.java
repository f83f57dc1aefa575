package loomwright.worked;

import loomwright.quantity.Quantity;

/**
 * A step that brings an entry to the unit the working uses.
 *
 * @param from the entry
 * @param result the same in the other unit
 */
public record ConversionStep(String words, Quantity from, Quantity result, String why) implements Step {}
