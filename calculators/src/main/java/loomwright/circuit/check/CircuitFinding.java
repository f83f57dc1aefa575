package loomwright.circuit.check;

import loomwright.worked.Finding;

/**
 * One finding on a circuit.
 *
 * @param check what was checked
 * @param partId the part it concerns
 * @param finding what was found: figure, limit, source and what to change
 */
public record CircuitFinding(Check check, String partId, Finding finding) {}
