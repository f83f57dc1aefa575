package loomwright.picture;

/**
 * A part of a circuit.
 *
 * @param symbol how it is drawn
 * @param label what is written beside it
 */
public record Component(Symbol symbol, String label) {}
