package loomwright.turned;

import loomwright.quantity.Quantity;

/**
 * One figure put into the field that is the unknown.
 *
 * @param figure the figure
 * @param gives what came of it, in words
 * @param passes whether that is as wanted
 */
public record Attempt(Quantity figure, String gives, boolean passes) {}
