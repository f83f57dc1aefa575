package loomwright.circuit.sheet;

import loomwright.quantity.Quantity;
import loomwright.worked.Finding;

/**
 * What one reading under load says.
 *
 * @param partId the part behind which it was taken
 * @param fromPartId the point before it that it is held against: the nearest with a reading, or the battery
 * @param hidden the extra resistance between the two that would explain it; null if it agrees or reads too high
 * @param heat what that resistance makes of heat at the largest current of the part; null with it
 * @param finding the finding: reading, limit and what to do
 */
public record ReadingFinding(String partId, String fromPartId, Quantity hidden, Quantity heat, Finding finding) {}
