package loomwright.circuit.sheet;

/**
 * One line of the parts list.
 *
 * @param what the part
 * @param count how many, or how much cable in {@code unit}
 * @param unit empty for pieces, {@code m} for cable, or {@code ft} for one sold by AWG
 * @param designations where they belong
 */
public record PartsLine(String what, String count, String unit, String designations) {}
