package loomwright.worked;

import loomwright.formula.Symbol;
import loomwright.quantity.Quantity;
import loomwright.table.Row;

/**
 * A step that reads a figure from a row of a published table.
 *
 * @param symbol the letter that stands for the figure from here on
 * @param row the row it was read from
 */
public record TableStep(String words, Symbol symbol, Quantity result, String why, Row row) implements Step {}
