package loomwright.worked;

import loomwright.formula.Formula;

/**
 * A formula that lessons may show.
 *
 * @param key its name within its calculator, such as {@code drop}
 * @param formula the formula
 */
public record NamedFormula(String key, Formula formula) {}
