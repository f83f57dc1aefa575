package loomwright.circuit.sheet;

import loomwright.quantity.Quantity;

/**
 * One pair of conductors to cut.
 *
 * @param partId the run
 * @param designation its short designation
 * @param title what it is called
 * @param conductor size and kind
 * @param route its route length
 * @param each the length to cut each of the two conductors to
 */
public record CutLine(String partId, String designation, String title, String conductor, Quantity route, Quantity each) {}
