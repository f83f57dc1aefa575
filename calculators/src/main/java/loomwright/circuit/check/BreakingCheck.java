package loomwright.circuit.check;

import loomwright.circuit.Node;
import loomwright.circuit.Protection;
import loomwright.quantity.Quantity;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;

/** Whether each device can break the highest prospective current at its place, and holds for the voltage there. */
final class BreakingCheck implements PartCheck {
    private static final String SHEET = "its data sheet: breaking capacity, interrupting rating or AIC, for direct current, with its voltage";

    @Override
    public void check(Node node, Context context, Findings findings) {
        if (!(node.figures() instanceof Protection)) {
            return;
        }
        Protection device = context.sheet(node);
        addCapacity(node, device, context.currents().highest(node.parent()), context, findings);
        if (device.breakingCapacity() != null) {
            addVoltage(node, device, context.battery().highest(), findings);
        }
    }

    private static void addCapacity(Node node, Protection device, Quantity prospective, Context context, Findings findings) {
        MissingFigure capacity = new MissingFigure("breaking-capacity", "breaking capacity of the " + device.words(), SHEET);
        if (device.breakingCapacity() == null) {
            findings.add(Check.BREAKING_CAPACITY, node, Finding.notKnown(
                    node.title() + ": no breaking capacity is published for a " + device.device().words() + " and none was entered.", prospective,
                    context.currents().source(), capacity));
            return;
        }
        MissingFigure battery = new MissingFigure(
                "short-circuit-current", "short-circuit current of the battery", "its data sheet, or a letter from its maker");
        if (prospective == null) {
            findings.add(Check.BREAKING_CAPACITY, node, Finding.notKnown(
                    node.title() + ": the highest prospective current is not known, because nothing says how little resistance the battery has.",
                    device.breakingCapacity(), context.currents().source(), battery));
            return;
        }
        findings.add(Check.BREAKING_CAPACITY, node, Comparison.of("The highest prospective current at " + node.title(), prospective)
                .atMost(device.breakingCapacity(), "what the " + device.device().words() + " can break", device.breakingSource())
                .restingOn(context.currents().source())
                .exact()
                .settledBy(device.breakingSource().standing().mayPass() ? battery : capacity)
                .otherwise(Verdict.STOP, "Take a device of greater breaking capacity at this place."));
    }

    private static void addVoltage(Node node, Protection device, Quantity highest, Findings findings) {
        if (device.voltage() == null) {
            findings.add(Check.BREAKING_CAPACITY, node, Finding.notKnown(
                    node.title() + ": up to what direct voltage its breaking capacity holds is not given.", highest, Findings.computed(),
                    new MissingFigure("rated-voltage", "direct voltage of the " + device.words(), SHEET)));
        } else {
            findings.add(Check.BREAKING_CAPACITY, node, Comparison.of("The highest voltage of the battery at " + node.title(), highest)
                    .atMost(device.voltage(), "the direct voltage that its breaking capacity holds for", device.breakingSource())
                    .exact()
                    .settledBy(new MissingFigure("breaking-capacity", "breaking capacity of the " + device.words(), SHEET))
                    .otherwise(Verdict.STOP, "Take a device made for this direct voltage."));
        }
    }
}
