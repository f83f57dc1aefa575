package loomwright.circuit;

/**
 * Why something cannot be done with a part.
 *
 * @param partId the part; empty for the circuit as a whole
 * @param fieldKey the field; empty if it is no single field
 * @param message what is wrong and what to do
 */
public record PartFault(String partId, String fieldKey, String message) {}
