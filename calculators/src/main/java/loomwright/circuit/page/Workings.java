package loomwright.circuit.page;

import loomwright.circuit.Conductor;
import loomwright.circuit.Panel;
import loomwright.circuit.Switching;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.worked.NextQuestion;

/** Where the figures of a finding are worked out step by step: the calculator that makes the same comparison, with exactly these figures. */
final class Workings {
    private Workings() {}

    /** The calculator and its entries; null if no calculator makes this comparison. */
    static NextQuestion of(Examination examination, CircuitFinding found) {
        WorkingFigures figures = new WorkingFigures(examination, found);
        String calculator = calculator(figures);
        return calculator == null ? null : new NextQuestion(calculator, "", figures.entries);
    }

    private static String calculator(WorkingFigures of) {
        RunWorkings run = new RunWorkings(of);
        DeviceWorkings device = new DeviceWorkings(of);
        PartWorkings part = new PartWorkings(of);
        return switch (of.found.check()) {
            case AMPACITY -> run.ampacity(of.node, of.figure());
            case CONDUCTOR_PROTECTED -> run.fuse(of.node.figures() instanceof Conductor ? of.node : of.other());
            case BREAKING_CAPACITY -> device.breaking();
            case SHORT_CIRCUIT_HEAT -> run.heating();
            case SELECTIVITY -> device.selectivity();
            case UNPROTECTED_LENGTH -> run.place();
            case JOINT_HEAT -> run.joint();
            case CONTINUOUS_CURRENT -> of.node.figures() instanceof Panel panel ? part.headroom(panel) : null;
            case START -> device.start();
            case SWITCH_HEAT -> of.node.figures() instanceof Switching switching ? part.switchHeat(switching) : null;
            case DAY -> part.sun(of.examination.day());
            case TRIGGER -> of.node.figures() instanceof Switching switching ? part.trigger(switching) : null;
            default -> null;
        };
    }

    /** The lesson that explains a check. */
    static String lesson(Check check) {
        return switch (check) {
            case STANDING_DRAW, DAY -> "04-a-days-energy";
            case CHARGING -> "05b-what-charges-it";
            case SYSTEM_VOLTAGE -> "05-the-battery-behind-it";
            case UNPROTECTED_LENGTH, ISOLATOR -> "06-where-to-tap-in";
            case OPERATING_POINT, VOLTAGE_DROP -> "08-voltage-drop";
            case AMPACITY -> "09-ampacity";
            case TRIGGER, SWITCH_DUTY, SWITCH_HEAT, START -> "11-switching";
            case PORTS -> "12-outlets";
            case JOINT_HEAT -> "13-joints";
            default -> "10-fuse-links-and-breakers";
        };
    }
}
