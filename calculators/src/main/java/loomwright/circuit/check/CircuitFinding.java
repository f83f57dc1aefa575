package loomwright.circuit.check;

import loomwright.worked.Finding;

/**
 * One finding on a circuit.
 *
 * @param check what was checked
 * @param partId the part it concerns
 * @param finding what was found: figure, limit, source and what to change
 * @param otherId the part it was held against; empty if there is none
 */
public record CircuitFinding(Check check, String partId, Finding finding, String otherId) {
    /** Whether it lies at a part, or holds another against it. */
    public boolean concerns(String id) {
        return partId.equals(id) || otherId.equals(id);
    }
}
