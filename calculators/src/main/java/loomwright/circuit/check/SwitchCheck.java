package loomwright.circuit.check;

import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.Switching;
import loomwright.circuit.solve.CircuitSolution;
import loomwright.circuit.solve.Solved;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.switching.SwitchFigures;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Sentence;
import loomwright.worked.Verdict;

/** Heat of a switching device, and whether its trigger reaches it and has a protected wire. */
final class SwitchCheck implements PartCheck {
    private static final double MARGIN_KELVIN = 10;

    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.figures() instanceof Switching switching && switching.isTriggered()) {
            if (switching.device() == Switching.Device.SOLID_STATE) {
                addHeat(node, switching, SwitchFigures.heat(context.designCurrent(node), switching.resistance()), findings);
            }
            addTrigger(node, switching, context, findings);
        }
    }

    private static void addHeat(Node node, Switching switching, Quantity heat, Findings findings) {
        Row usual = SwitchFigures.junctionLimit();
        MissingFigure resistance = new MissingFigure(
                "junction-to-air", "thermal resistance of " + node.title(), "the data sheets of switch and heat sink, in K/W, added up");
        if (switching.junctionToAir() == null) {
            findings.add(Check.SWITCH_HEAT, node, Finding.notKnown(
                    node.title() + " makes " + heat.text(3) + " of heat; how warm that makes it was not checked.", heat, usual.source(), resistance));
            return;
        }
        Quantity junction = SwitchFigures.junction(switching.air(), heat, switching.junctionToAir());
        Quantity room = Quantity.of(switching.junctionLimit().in(Units.CELSIUS).value() - junction.value(), Units.KELVIN);
        Quantity margin = Quantity.of(MARGIN_KELVIN, Units.KELVIN);
        boolean above = room.value() < 0;
        findings.add(Check.SWITCH_HEAT, node, Comparison.of(
                        node.title() + " makes " + heat.text(3) + " of heat, and its junction comes to " + junction.text(3) + ": what is left below its limit of "
                                + switching.junctionLimit().text(), room)
                .atLeast(margin, "a margin of 10 K", usual.source())
                .restingOn(switching.figuresFrom())
                .exact()
                .settledBy(resistance)
                .otherwise(above ? Verdict.STOP : Verdict.CAUTION, "Take a larger heat sink, a switch of less resistance, a cooler place or less current."));
    }

    private static void addTrigger(Node node, Switching switching, Context context, Findings findings) {
        Node from = node.trigger();
        if (from == null) {
            stop(node, switching, "no trigger: nothing turns it on", "Choose the part its trigger wire comes from: a fused way that is live only when it shall be on.", findings);
        } else if (node.isOnTheWayTo(from)) {
            stop(
                    node, switching, "its trigger from " + from.title() + ", behind itself: once off it cannot turn on, once on it cannot turn off",
                    "Take the trigger from a part that is live without it.", findings);
        } else {
            addReach(node, switching.device() == Switching.Device.RELAY, context.solution(), findings);
            addWire(node, switching, from, findings);
        }
    }

    private static void stop(Node node, Switching switching, String has, String remedy, Findings findings) {
        findings.add(Check.TRIGGER, node, new Finding(
                Verdict.STOP, node.title() + " has " + has + ".", switching.continuousCurrent(), null, Findings.computed(), remedy));
    }

    private static void addReach(Node node, boolean relay, CircuitSolution solution, Findings findings) {
        Row row = SwitchFigures.leastTrigger(relay);
        for (Solved solved : solution.lowest()) {
            if (solved.exists()) {
                findings.add(Check.TRIGGER, node, Comparison.of(
                                "What reaches the trigger of " + node.title() + " with the battery nearly empty",
                                Quantity.of(solved.triggerVolts(node), Units.VOLT))
                        .atLeast(
                                row.quantity("value", Units.VOLT), "what " + (relay ? "a relay of the 70 A class" : "a logic-level input") + " needs",
                                row.source())
                        .exact()
                        .otherwise(Verdict.STOP, "Take a thicker trigger wire or a shorter way; look up what your own part needs."));
                return;
            }
        }
    }

    /** The trigger wire is guarded by the fuse-link at its start, or, without one, by the device before the place it is taken from. */
    private static void addWire(Node node, Switching switching, Node from, Findings findings) {
        Node before = from.kind() == PartKind.PROTECTION ? from : from.deviceBefore();
        Quantity rating = switching.triggerFuse() != null ? switching.triggerFuse() : before == null ? null : GuardCheck.rating(before);
        if (rating == null) {
            stop(node, switching, "a trigger wire without any device before it", "Put a fuse-link where the trigger wire begins; 2 A is common.", findings);
            return;
        }
        String device = switching.triggerFuse() != null ? "The fuse-link of the trigger of " + node.title() : before.title() + ", before the trigger wire of " + node.title();
        findings.add(Check.TRIGGER, node, switching.triggerCapacity().judgeRating(
                device + ": its rating", rating,
                Sentence.of("Put a fuse-link of a smaller rating where the trigger wire begins, 2 A is common, or take a thicker wire.")));
    }
}
