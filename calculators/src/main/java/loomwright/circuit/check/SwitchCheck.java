package loomwright.circuit.check;

import loomwright.circuit.Node;
import loomwright.circuit.Switching;
import loomwright.circuit.solve.CircuitSolution;
import loomwright.circuit.solve.Solved;
import loomwright.conductor.AmpacityRuleSet;
import loomwright.conductor.Insulation;
import loomwright.conductor.RatedCurrent;
import loomwright.conductor.Surroundings;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.switching.SwitchFigures;
import loomwright.table.Row;
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
            addTrigger(node, switching, context.solution(), findings);
        }
    }

    private static void addHeat(Node node, Switching switching, Quantity heat, Findings findings) {
        Row usual = SwitchFigures.junctionLimit();
        if (switching.junctionToAir() == null) {
            findings.caution(
                    Check.SWITCH_HEAT, node,
                    node.title() + " makes " + heat.text(3) + " of heat. How warm that makes it was not checked: its thermal resistance to the "
                            + "air is not entered.",
                    heat, usual.source(), "Enter the thermal resistance from the data sheets of switch and heat sink.");
            return;
        }
        Quantity junction = SwitchFigures.junction(switching.air(), heat, switching.junctionToAir());
        Quantity limit = switching.junctionLimit().in(Units.CELSIUS);
        boolean above = junction.value() > limit.value();
        boolean close = junction.value() > limit.value() - MARGIN_KELVIN;
        findings.add(
                Check.SWITCH_HEAT, node, !close, above ? Verdict.STOP : Verdict.CAUTION,
                node.title() + " makes " + heat.text(3) + " of heat; its junction comes to " + junction.text(3) + ", "
                        + (above ? "above" : "below") + " its limit of " + limit.text() + (close && !above ? ", by less than a margin of 10 K." : "."),
                junction, limit, usual.source(), "Take a larger heat sink, a switch of less resistance, a cooler place or less current.");
    }

    private static void addTrigger(Node node, Switching switching, CircuitSolution solution, Findings findings) {
        Node from = node.trigger();
        if (from == null) {
            findings.add(
                    Check.TRIGGER, node, false, Verdict.STOP, node.title() + " has no trigger: nothing turns it on.",
                    switching.triggerFuse(), null, Findings.computed(), "Choose the part its trigger wire comes from: a fused way that is live only when it shall be on.");
            return;
        }
        if (node.isOnTheWayTo(from)) {
            findings.add(
                    Check.TRIGGER, node, false, Verdict.STOP,
                    node.title() + " takes its trigger from " + from.title() + ", behind itself: once off it cannot turn on, once on it cannot turn off.",
                    switching.triggerFuse(), null, Findings.computed(), "Take the trigger from a part that is live without it.");
            return;
        }
        addReach(node, switching.device() == Switching.Device.RELAY, solution, findings);
        addWire(node, switching, findings);
    }

    private static void addReach(Node node, boolean relay, CircuitSolution solution, Findings findings) {
        Row row = SwitchFigures.leastTrigger(relay);
        Quantity least = row.quantity("value", Units.VOLT);
        for (Solved solved : solution.lowest()) {
            if (solved.exists()) {
                Quantity volts = Quantity.of(solved.triggerVolts(node), Units.VOLT);
                boolean passed = volts.base() >= least.base();
                findings.add(
                        Check.TRIGGER, node, passed, Verdict.STOP,
                        "With the battery nearly empty " + volts.text(3) + " reach the trigger of " + node.title() + ", "
                                + (passed ? "above" : "below") + " the " + least.text() + " that "
                                + (relay ? "a relay of the 70 A class" : "a logic-level input") + " needs at least.",
                        volts, least, row.source(), "Take a thicker trigger wire or a shorter way; look up what your own part needs.");
                return;
            }
        }
    }

    /** The wire is taken as of the lowest insulation rating. source: 33 CFR 183.425 Table 5. */
    private static void addWire(Node node, Switching switching, Findings findings) {
        Row row = AmpacityRuleSet.BOAT.row(switching.triggerSize());
        if (row == null) {
            findings.caution(
                    Check.TRIGGER, node,
                    "The trigger wire of " + node.title() + ", " + switching.triggerSize().text() + ", has too little copper for Table 5 of 33 CFR: its "
                            + "ampacity was not checked.",
                    switching.triggerFuse(), Findings.computed(), "Hold the fuse-link of " + switching.triggerFuse().text() + " against the cable maker's data.");
            return;
        }
        Quantity nominal = Quantity.of(12, Units.VOLT);
        RatedCurrent rated = AmpacityRuleSet.BOAT.at(row, new Surroundings(Insulation.T60, false, null, 2, nominal));
        boolean passed = Findings.within(switching.triggerFuse(), rated.value());
        findings.add(
                Check.TRIGGER, node, passed, Verdict.STOP,
                "The trigger wire of " + node.title() + ", " + switching.triggerSize().text() + ", is fused at " + switching.triggerFuse().text()
                        + ", " + Findings.withinOrAbove(passed) + " the " + rated.value().text() + " it may carry with 60 °C insulation.",
                switching.triggerFuse(), rated.value(), rated.row().source(), "Take a smaller fuse-link; 2 A is common for a trigger.");
    }
}
