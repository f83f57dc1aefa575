package loomwright.plan;

import java.util.HashSet;
import java.util.Set;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.solve.CircuitSolution;
import loomwright.circuit.solve.Solved;
import loomwright.protection.DeviceKind;
import loomwright.worked.Comparison;
import loomwright.worked.Verdict;

/** Takes a step of the plan again, with the next size, where the examination stops it or cautions against it. */
final class Mending {
    /** At so many times its rating a blade fuse-link opens within half a second. */
    private static final double OPENS_AT_ONCE = 3.5;

    private final Sizing sizing;
    private final Draft draft;
    private final Circuit circuit;
    private final CircuitSolution solution;
    private Obstacle obstacle;
    private String breakMore = "";

    private Mending(Sizing sizing, Examination examination) {
        this.sizing = sizing;
        this.draft = sizing.draft();
        this.circuit = examination.circuit();
        this.solution = examination.solution();
    }

    /** What became of one round: whether a step was taken again, or all begins anew with a thicker feed or a device that breaks more, or what stands in the way. */
    record Round(boolean changed, boolean thickerFeed, Obstacle obstacle, String breakMore) {}

    /** Looks at every finding that stands against the circuit, and takes the step behind it again. */
    static Round of(Sizing sizing, Examination examination) {
        Mending mending = new Mending(sizing, examination);
        boolean changed = false;
        Set<String> done = new HashSet<>();
        for (CircuitFinding found : examination.findings()) {
            if (standsAgainst(found)) {
                String step = mending.mend(found, done);
                changed |= !step.isEmpty();
                if (step.equals(Draft.FEED)) {
                    return new Round(true, true, null, "");
                }
                if (step.isEmpty() && (mending.obstacle != null || !mending.breakMore.isEmpty())) {
                    return new Round(false, false, mending.obstacle, mending.breakMore);
                }
            }
        }
        return new Round(changed, false, null, "");
    }

    /** A stop, or a caution about what a size decides. */
    static boolean standsAgainst(CircuitFinding found) {
        Verdict verdict = found.finding().verdict();
        return verdict == Verdict.STOP || verdict == Verdict.CAUTION && switch (found.check()) {
            case AMPACITY, CONDUCTOR_PROTECTED, GUARDED, SHORT_CIRCUIT_HEAT, VOLTAGE_DROP, DEVICE_LOADING, SELECTIVITY, OPERATING_POINT -> true;
            default -> false;
        };
    }

    /** The step that was taken again; empty if none was. */
    private String mend(CircuitFinding found, Set<String> done) {
        String step = step(found);
        if (done.contains(step)) {
            return step;
        }
        boolean onlyClose = found.check() != Check.SHORT_CIRCUIT_HEAT && found.finding().verdict() == Verdict.CAUTION && found.finding().limit() != null
                && Comparison.atMost(found.finding().figure(), found.finding().limit());
        if (take(step, found)) {
            done.add(step);
            return step;
        }
        obstacle = breakMore.isEmpty() && !onlyClose ? obstacle(found) : null;
        return "";
    }

    /** The part whose size decides a finding. */
    private String step(CircuitFinding found) {
        Node node = circuit.node(found.partId());
        return switch (found.check()) {
            case AMPACITY, CONDUCTOR_PROTECTED, SHORT_CIRCUIT_HEAT -> run(found);
            case VOLTAGE_DROP, OPERATING_POINT -> runBefore(node);
            case SELECTIVITY -> node.deviceBefore().id();
            case START -> starves(node) ? runBefore(node) : deviceToStart(node);
            case SWITCH_DUTY, CONTINUOUS_CURRENT, GUARDED -> switchOf(found);
            default -> found.partId();
        };
    }

    private String run(CircuitFinding found) {
        boolean own = circuit.node(found.partId()).kind() == PartKind.CONDUCTOR;
        return own || found.otherId().isEmpty() ? found.partId() : found.otherId();
    }

    private String runBefore(Node node) {
        Node at = node;
        while (at != null && at.kind() != PartKind.CONDUCTOR) {
            at = at.parent();
        }
        Branch branch = at == null ? null : branch(at.id());
        boolean last = branch != null && branch.run().size().base() >= branch.run().thickest().base() * (1 - 1e-9);
        return last && !draft.isSingle() && draft.panel == null ? Draft.FEED : at == null ? node.id() : at.id();
    }

    /** Whether its start takes more than its runs let through. */
    private boolean starves(Node load) {
        for (Solved start : solution.starts()) {
            if (start.situation().starting() == load) {
                return !start.exists();
            }
        }
        return false;
    }

    /** The device of the load, or the main one if its own is large enough for the start. */
    private String deviceToStart(Node load) {
        Branch branch = branch(load.id());
        double start = branch.need().load().startCurrent().base();
        boolean own = !draft.isSingle() && start >= OPENS_AT_ONCE * branch.device().rating().base();
        return own ? branch.deviceId() : Draft.MAIN;
    }

    private String switchOf(CircuitFinding found) {
        Node node = circuit.node(found.partId());
        boolean other = node.kind() != PartKind.SWITCH && !found.otherId().isEmpty() && circuit.node(found.otherId()).kind() == PartKind.SWITCH;
        return other ? found.otherId() : found.partId();
    }

    private boolean take(String step, CircuitFinding found) {
        if (found.check() == Check.BREAKING_CAPACITY) {
            boolean blade = draft.panel == null && sizing.device(step).kind() == DeviceKind.BLADE;
            breakMore = blade ? step : "";
            return false;
        }
        Node node = circuit.node(step);
        return switch (node.kind()) {
            case CONDUCTOR -> thicken(step);
            case PROTECTION -> raise(step);
            case SWITCH -> found.finding().limit() != null && carry(step, found);
            default -> false;
        };
    }

    private boolean thicken(String step) {
        if (step.equals(Draft.FEED)) {
            return draft.panel == null && draft.feed.thicken();
        }
        RunChoice loop = draft.loop(step);
        Branch branch = branch(step);
        return loop != null ? loop.thicken() : branch != null && branch.run().thicken();
    }

    private boolean raise(String step) {
        boolean existing = step.equals(Draft.MAIN) && draft.panel != null || step.equals(Draft.TRIGGER_FUSE);
        DeviceChoice device = existing ? null : sizing.device(step);
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
        if (branch == null && draft.isSingle()) {
            branch = draft.branches.get(0);
        }
        int item = branch == null ? Answers.JOB : branch.need().item();
        return switch (found.check()) {
            case VOLTAGE_DROP, OPERATING_POINT, SHORT_CIRCUIT_HEAT -> branch == null
                    ? Obstacles.of(Answers.JOB, found.check() == Check.SHORT_CIRCUIT_HEAT ? "capacity" : "box-route", found)
                    : Obstacles.tooFar(branch.need(), branch.run().thickest(), found.finding().words());
            case BREAKING_CAPACITY -> Obstacles.ofBattery(
                    "short-circuit-current", found.finding().words(),
                    "Ask the maker of the battery for its short-circuit current: the careful value is often more than the true one.");
            case CONTINUOUS_CURRENT -> found.partId().equals("battery")
                    ? Obstacles.ofBattery("battery-limit", found.finding().words(), found.finding().remedy())
                    : Obstacles.of(item, "switched", found);
            case SWITCH_DUTY, TRIGGER -> Obstacles.noSwitch();
            case START -> Obstacles.of(item, "start", found);
            case SYSTEM_VOLTAGE, CHARGING -> Obstacles.of(Answers.JOB, "chemistry", found);
            default -> Obstacles.of(item, "draws", found);
        };
    }
}
