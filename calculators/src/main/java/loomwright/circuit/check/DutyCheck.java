package loomwright.circuit.check;

import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.Switching;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.switching.SwitchDuty;
import loomwright.switching.SwitchedLoad;

/** Whether a switch or relay stands what the loads behind it take at the moment it closes or opens: a finding for each kind of load. */
final class DutyCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (!(node.figures() instanceof Switching switching)) {
            return;
        }
        for (SwitchedLoad kind : SwitchedLoad.values()) {
            double amperes = amperes(node, kind, context.battery().lowest().base());
            if (amperes > 0) {
                findings.add(Check.SWITCH_DUTY, node, SwitchDuty.check(
                        node.title(), switching.continuousCurrent(), node.part().figuresFrom(), Quantity.of(amperes, Units.AMPERE), kind,
                        context.battery().highest(), "continuous-current"));
            }
        }
    }

    private static double amperes(Node node, SwitchedLoad kind, double volts) {
        double amperes = 0;
        for (Node next : node.behind()) {
            amperes += next.figures() instanceof Load load && load.switchedAs() == kind ? load.current(volts).base() : 0;
        }
        return amperes;
    }
}
