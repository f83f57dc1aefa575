package loomwright.worked;

import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.source.Source;

/**
 * A step that puts numbers into a formula.
 *
 * @param source where the formula or a constant in it comes from, or null for plain arithmetic
 */
public record FormulaStep(String words, Formula formula, Values values, Quantity result, String why, Source source) implements Step {}
