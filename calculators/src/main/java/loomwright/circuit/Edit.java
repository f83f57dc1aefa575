package loomwright.circuit;

import java.util.List;

/**
 * What came of a change: the new circuit, or why the change cannot be made. The old circuit stays either way.
 *
 * @param circuit the new circuit, or null if there are faults
 * @param faults the faults; empty if there is a circuit
 */
public record Edit(Circuit circuit, List<PartFault> faults) {}
