package loomwright.worked;

import loomwright.quantity.Quantity;

/**
 * An answer.
 *
 * @param output what it answers
 * @param quantity the answer, not rounded
 */
public record Result(Output output, Quantity quantity) {}
