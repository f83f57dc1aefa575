package loomwright.circuit;

import java.util.List;

/**
 * What came of understanding a circuit: the installation, or the faults that stand in its way.
 *
 * @param installation the installation, or null if there are faults
 * @param faults the faults, each with its part and field; empty if there is an installation
 */
public record InstallationRead(Installation installation, List<PartFault> faults) {}
