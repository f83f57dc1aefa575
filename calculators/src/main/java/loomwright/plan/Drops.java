package loomwright.plan;

import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.solve.CircuitSolution;
import loomwright.circuit.solve.Solved;

/** Takes the next size for each run that loses too much in the solved circuit: what the examination would say of it is known before, and is had for a fraction of its work. */
final class Drops {
    private Drops() {}

    /** Whether a run was thickened. One that is as thick as it gets is left to {@link Mending}. */
    static boolean mended(Sizing sizing, Circuit circuit) {
        CircuitSolution solution = CircuitSolution.of(circuit);
        boolean changed = false;
        for (Branch branch : sizing.draft().branches) {
            Node load = circuit.node(branch.loadId());
            Solved worst = solution.worstFor(load);
            boolean tooMuch = worst != null && worst.drop(load) > Sizing.ROOM * branch.need().allowedVolts() * (1 + 1e-9);
            changed |= tooMuch && branch.run().thicken();
        }
        return changed;
    }
}
