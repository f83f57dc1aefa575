package loomwright.circuit.check;

import loomwright.circuit.Node;
import loomwright.circuit.Protection;
import loomwright.circuit.solve.FaultCurrents;
import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Verdict;

/** Whether each device can break the highest prospective current at its place. */
final class BreakingCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.figures() instanceof Protection device) {
            check(node, device, context, findings);
        }
    }

    private static void check(Node node, Protection device, Context context, Findings findings) {
        FaultCurrents currents = context.currents();
        Quantity prospective = currents.highest(node.parent());
        if (device.breakingCapacity() == null) {
            findings.caution(
                    Check.BREAKING_CAPACITY, node,
                    node.title() + ": no breaking capacity is in print for a " + device.device().words()
                            + " and none was entered, so it was not checked.",
                    prospective, currents.source(), "Enter the breaking capacity and its direct voltage from the data sheet.");
            return;
        }
        if (prospective == null) {
            findings.caution(
                    Check.BREAKING_CAPACITY, node,
                    node.title() + ": the highest prospective current is not known, because nothing says how little resistance the battery "
                            + "has.",
                    device.breakingCapacity(), currents.source(), "Enter the short-circuit current from the battery's maker.");
            return;
        }
        boolean passed = Findings.within(prospective, device.breakingCapacity());
        Source source = Findings.weaker(device.breakingSource(), currents.source());
        findings.add(
                Check.BREAKING_CAPACITY, node, passed, Verdict.STOP,
                node.title() + ": the highest prospective current of " + prospective.text(3) + " is " + Findings.withinOrAbove(passed)
                        + " the " + device.breakingCapacity().text() + " that the " + device.device().words() + " can break.",
                prospective, device.breakingCapacity(), source,
                "Take a device of greater breaking capacity here, or put one before it nearer to the battery.");
        addVoltage(context.battery().highest(), device, node, findings);
    }

    private static void addVoltage(Quantity highest, Protection device, Node node, Findings findings) {
        if (device.voltage() != null && !Findings.within(highest, device.voltage())) {
            findings.add(
                    Check.BREAKING_CAPACITY, node, false, Verdict.STOP,
                    node.title() + ": the circuit reaches " + highest.text() + ", above the " + device.voltage().text()
                            + " that its breaking capacity holds for.",
                    highest, device.voltage(), device.breakingSource(), "Take a device made for this direct voltage.");
        }
    }
}
