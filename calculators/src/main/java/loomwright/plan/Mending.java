package loomwright.plan;

import java.util.HashSet;
import java.util.Set;
import loomwright.circuit.Circuit;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/** Takes a step of the plan again, with the next size, where the examination stops it or cautions against it. */
final class Mending {
    private final Sizing sizing;
    private final Draft draft;
    private final Circuit circuit;

    private Mending(Sizing sizing, Circuit circuit) {
        this.sizing = sizing;
        this.draft = sizing.draft();
        this.circuit = circuit;
    }

    /** What became of one round: whether a step was taken again, or all begins anew with a thicker feed, or what stands in the way. */
    record Round(boolean changed, boolean thickerFeed, Obstacle obstacle) {}

    /** Looks at every finding that stands against the circuit, and takes the step behind it again, each no more than once. */
    static Round of(Sizing sizing, Examination examination) {
        Mending mending = new Mending(sizing, examination.circuit());
        Set<String> done = new HashSet<>();
        for (CircuitFinding found : examination.findings()) {
            String step = standsAgainst(found) ? mending.step(found) : "";
            if (step.isEmpty() || done.contains(step)) {
                continue;
            }
            if (mending.take(step, found)) {
                if (step.equals(Draft.FEED)) {
                    return new Round(true, true, null);
                }
                done.add(step);
            } else if (!isOnlyClose(found)) {
                return new Round(false, false, mending.obstacle(found));
            }
        }
        return new Round(!done.isEmpty(), false, null);
    }

    /** A stop, or a caution about what a size decides. */
    static boolean standsAgainst(CircuitFinding found) {
        Verdict verdict = found.finding().verdict();
        return verdict == Verdict.STOP || verdict == Verdict.CAUTION && switch (found.check()) {
            case AMPACITY, CONDUCTOR_PROTECTED, GUARDED, SHORT_CIRCUIT_HEAT, VOLTAGE_DROP, DEVICE_LOADING, SELECTIVITY, OPERATING_POINT -> true;
            default -> false;
        };
    }

    /** A caution that tells how near a figure comes to its limit. */
    private static boolean isOnlyClose(CircuitFinding found) {
        Finding finding = found.finding();
        return found.check() != Check.SHORT_CIRCUIT_HEAT && finding.verdict() == Verdict.CAUTION && finding.limit() != null
                && Comparison.atMost(finding.figure(), finding.limit());
    }

    /** The part whose size decides a finding. That of a start names the device that opens, or else a load that is starved. */
    private String step(CircuitFinding found) {
        return switch (found.check()) {
            case VOLTAGE_DROP, OPERATING_POINT -> runBefore(found.partId());
            case SELECTIVITY -> circuit.node(found.partId()).deviceBefore().id();
            case START -> found.otherId().isEmpty() ? runBefore(found.partId()) : found.otherId();
            default -> found.partId().equals(SwitchChoice.loopId(Draft.SWITCH)) ? runOfAll() : found.partId();
        };
    }

    /** What a switch of all parts; the way to it and back is of the same size. */
    private String runOfAll() {
        return draft.isSingle() ? draft.branches.get(0).runId() : Draft.FEED;
    }

    /** The run of a load, or the feed of all where that is as thick as it gets. */
    private String runBefore(String loadId) {
        Branch branch = branch(loadId);
        return branch == null || branch.run().isThickest() && !draft.isSingle() ? Draft.FEED : branch.runId();
    }

    private boolean take(String step, CircuitFinding found) {
        return switch (circuit.node(step).kind()) {
            case CONDUCTOR -> thicken(step);
            case PROTECTION -> found.check() != Check.BREAKING_CAPACITY && raise(step);
            case SWITCH -> found.finding().limit() != null && carry(step, found);
            default -> false;
        };
    }

    private boolean thicken(String step) {
        return step.equals(Draft.FEED) ? draft.feed.thicken() : branch(step).run().thicken();
    }

    /** A device that is there already is none of those that are being chosen. */
    private boolean raise(String step) {
        DeviceChoice device = sizing.device(step);
        return device != null && device.goAbove(device.rating());
    }

    private boolean carry(String step, CircuitFinding found) {
        double wanted = Math.max(found.finding().figure().base(), found.finding().limit().base());
        SwitchChoice own = draft.switchOf(step);
        return own != null && wanted > own.rating().base() && own.carry(wanted);
    }

    private Branch branch(String id) {
        for (Branch branch : draft.branches) {
            if (branch.runId().equals(id) || branch.loadId().equals(id) || branch.deviceId().equals(id) || branch.switchId().equals(id)
                    || SwitchChoice.loopId(branch.switchId()).equals(id)) {
                return branch;
            }
        }
        return null;
    }

    private Obstacle obstacle(CircuitFinding found) {
        Branch branch = branch(found.partId());
        int item = branch == null ? Answers.JOB : branch.need().item();
        return switch (found.check()) {
            case VOLTAGE_DROP, OPERATING_POINT, SHORT_CIRCUIT_HEAT -> branch == null
                    ? Obstacles.of(Answers.JOB, found.check() == Check.SHORT_CIRCUIT_HEAT ? "capacity" : "box-route", found)
                    : Obstacles.tooFar(branch.need(), branch.run().thickest(), found.finding().words());
            case BREAKING_CAPACITY -> Obstacles.ofBattery(
                    "short-circuit-current", found.finding().words(),
                    "Ask the maker of the battery for its short-circuit current: the careful value is often more than the true one.");
            case CONTINUOUS_CURRENT -> Obstacles.ofBattery("battery-limit", found.finding().words(), found.finding().remedy());
            case SWITCH_DUTY, TRIGGER -> Obstacles.noSwitch();
            case START -> Obstacles.of(item, "start", found);
            case SYSTEM_VOLTAGE, CHARGING -> Obstacles.of(Answers.JOB, "chemistry", found);
            default -> Obstacles.of(item, "draws", found);
        };
    }
}
