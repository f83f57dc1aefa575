package loomwright.worked;

import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;

/**
 * A known mistake, worked out with the present numbers.
 *
 * @param key its name, such as {@code forgot-the-return}
 * @param output the answer it spoils
 * @param name the mistake in a few words: {@code The return conductor left out}
 * @param words one sentence on why it is wrong
 * @param formula the mistaken formula
 * @param values the numbers put into it
 * @param value what it gives
 */
public record Slip(String key, Output output, String name, String words, Formula formula, Values values, Quantity value) {}
