package loomwright.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.Protection;
import loomwright.circuit.check.Examination;
import loomwright.circuit.solve.FaultCurrents;
import loomwright.protection.DeviceKind;
import loomwright.quantity.Quantity;

/**
 * What came of some answers: a circuit that the examination does not stop, every choice with its reason; or what stands in the way.
 *
 * @param circuit null if there is an obstacle
 * @param examination of the circuit; null if there is an obstacle
 * @param chosen the choices, in the order they were made
 * @param taken the careful values that stand for what was left open
 * @param there the parts that are there already, by id: nobody has to buy them
 * @param asks what a person must decide
 * @param obstacle null if there is a circuit
 */
public record Plan(
        Circuit circuit, Examination examination, List<Chosen> chosen, List<Taken> taken, List<String> there, List<String> asks, Obstacle obstacle) {
    /** More rounds than there are steps to take again. */
    private static final int MOST_ROUNDS = 200;

    /** Works out the plan. */
    public static Plan of(Answers answers) {
        Job job = Job.of(answers);
        if (job.needs().size() > Job.MOST_BRANCHES) {
            return none(job, Obstacles.tooMany(job.needs().size()));
        }
        if (job.panel() == null) {
            return of(job, null);
        }
        Plan onPanel = of(job, null);
        return onPanel.circuit != null || onPanel.obstacle.item() != Answers.JOB ? onPanel : of(job.withoutPanel(), onPanel.obstacle);
    }

    private static Plan none(Job job, Obstacle obstacle) {
        return new Plan(null, null, List.of(), job.taken(), List.of(), List.of(), obstacle);
    }

    private static Plan of(Job job, Obstacle ofPanel) {
        Set<String> breakMore = new HashSet<>();
        int feedSteps = 0;
        Sizing sizing = Sizing.of(job, breakMore, feedSteps);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            if (sizing.obstacle() != null) {
                return none(job, EnergyReasons.beside(job, sizing.obstacle()));
            }
            Circuit circuit = sizing.draft().circuit();
            if (mustBreakMore(job, circuit, breakMore)) {
                sizing = Sizing.of(job, breakMore, feedSteps);
                continue;
            }
            if (Drops.mended(sizing, circuit)) {
                sizing.settle();
                continue;
            }
            Examination examination = Examination.of(circuit);
            Mending.Round mended = Mending.of(sizing, examination);
            if (mended.obstacle() != null) {
                return none(job, mended.obstacle());
            }
            if (mended.thickerFeed()) {
                feedSteps++;
                sizing = Sizing.of(job, breakMore, feedSteps);
            } else if (mended.changed()) {
                sizing.settle();
            } else {
                return new Plan(circuit, examination, Reasons.of(job, sizing.draft(), examination, ofPanel), job.taken(), sizing.draft().there(), Asks.of(job, sizing.draft()), null);
            }
        }
        throw new IllegalStateException("no end to the steps");
    }

    /** Adds to {@code breakMore} the blade fuse-links that cannot break a short circuit where they stand; whether there were any. */
    private static boolean mustBreakMore(Job job, Circuit circuit, Set<String> breakMore) {
        if (job.panel() != null) {
            return false;
        }
        FaultCurrents currents = FaultCurrents.of(circuit);
        Quantity breaks = DeviceKind.BLADE.breakingRow().quantity("breaking-capacity");
        boolean more = false;
        for (Node node : circuit.nodes()) {
            if (node.figures() instanceof Protection device && device.device() == DeviceKind.BLADE) {
                Quantity highest = currents.highest(node.parent());
                boolean holds = job.battery().isKnown() && highest != null && highest.base() <= breaks.base();
                more |= !holds && breakMore.add(node.id());
            }
        }
        return more;
    }
}
