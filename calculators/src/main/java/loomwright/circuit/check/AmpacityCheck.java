package loomwright.circuit.check;

import loomwright.circuit.Conductor;
import loomwright.circuit.Node;
import loomwright.conductor.CarryingCapacity;
import loomwright.protection.DeviceRule;
import loomwright.protection.RuleSet;
import loomwright.quantity.Quantity;
import loomwright.worked.Finding;
import loomwright.worked.Sentence;
import loomwright.worked.Verdict;

/** What each conductor may carry where it lies, against its current and against the device that guards it. */
final class AmpacityCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (!(node.figures() instanceof Conductor conductor)) {
            return;
        }
        CarryingCapacity capacity = conductor.capacity();
        findings.add(Check.AMPACITY, node, capacity.judge(
                node.title() + ", " + conductor.size().text() + ": its largest current", context.designCurrent(node),
                "Take a thicker conductor, insulation of a higher rating, or less load on it."));
        if (capacity.isUnbelievable()) {
            findings.add(Check.AMPACITY, node, capacity.believable());
        }
        Node smallest = GuardCheck.smallestBefore(node);
        if (smallest != null) {
            addDevice(node, conductor, capacity, smallest, context, findings);
        }
    }

    /** If even the smallest device on the way lets too much pass, the nearest is named: it is the one meant to guard. */
    private static void addDevice(Node node, Conductor conductor, CarryingCapacity capacity, Node smallest, Context context, Findings findings) {
        RuleSet rule = context.battery().fuseRule();
        Finding bySmallest = guarded(smallest.title(), GuardCheck.rating(smallest), node, conductor, rule);
        boolean stops = bySmallest.verdict() == Verdict.STOP;
        Node device = stops ? node.deviceBefore() : smallest;
        Finding finding = stops ? guarded(device.title(), GuardCheck.rating(device), node, conductor, rule) : bySmallest;
        GuardCheck.add(Check.CONDUCTOR_PROTECTED, node, device, capacity.value(), finding, context, findings);
        if (capacity.isRated()) {
            GuardCheck.addNearest(node, smallest, DeviceRule.most(capacity, rule), capacity.source(), findings);
        }
    }

    /** A device held against a conductor it guards. */
    static Finding guarded(String device, Quantity rating, Node node, Conductor conductor, RuleSet rule) {
        return guarded(device, rating, node, conductor, rule, Sentence.later(() -> "Take a smaller rating for " + device + ", put a device before " + node.title()
                + ", or take a thicker conductor or insulation of a higher rating there."));
    }

    static Finding guarded(String device, Quantity rating, Node node, Conductor conductor, RuleSet rule, Sentence remedy) {
        return DeviceRule.of(device, rating).guardsConductor(node.title(), conductor.capacity(), rule, remedy);
    }
}
