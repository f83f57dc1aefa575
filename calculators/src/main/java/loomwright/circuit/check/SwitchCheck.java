package loomwright.circuit.check;

import loomwright.circuit.Installation;
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
final class SwitchCheck {
    private static final double MARGIN_KELVIN = 10;

    private final Installation installation;
    private final CircuitSolution solution;
    private final Findings findings;

    SwitchCheck(Installation installation, CircuitSolution solution, Findings findings) {
        this.installation = installation;
        this.solution = solution;
        this.findings = findings;
    }

    void add(int i, Quantity design) {
        Switching switching = installation.switching(i);
        if (switching.device() == Switching.Device.SOLID_STATE) {
            addHeat(i, switching, SwitchFigures.heat(design, switching.resistance()));
        }
        if (switching.isTriggered()) {
            addTrigger(i, switching);
        }
    }

    private void addHeat(int i, Switching switching, Quantity heat) {
        Row usual = SwitchFigures.junctionLimit();
        if (switching.junctionToAir() == null) {
            findings.caution(
                    Check.SWITCH_HEAT, i,
                    findings.title(i) + " makes " + heat.text(3) + " of heat. How warm that makes it was not checked: its thermal resistance to the "
                            + "air is not entered.",
                    heat, usual.source(), "Enter the thermal resistance from the data sheets of switch and heat sink.");
            return;
        }
        Quantity junction = SwitchFigures.junction(switching.air(), heat, switching.junctionToAir());
        Quantity limit = switching.junctionLimit().in(Units.CELSIUS);
        boolean above = junction.value() > limit.value();
        boolean close = junction.value() > limit.value() - MARGIN_KELVIN;
        findings.add(
                Check.SWITCH_HEAT, i, !close, above ? Verdict.STOP : Verdict.CAUTION,
                findings.title(i) + " makes " + heat.text(3) + " of heat; its junction comes to " + junction.text(3) + ", "
                        + (above ? "above" : "below") + " its limit of " + limit.text() + (close && !above ? ", by less than a margin of 10 K." : "."),
                junction, limit, usual.source(), "Take a larger heat sink, a switch of less resistance, a cooler place or less current.");
    }

    private void addTrigger(int i, Switching switching) {
        int from = installation.trigger(i);
        if (from < 0) {
            findings.add(
                    Check.TRIGGER, i, false, Verdict.STOP, findings.title(i) + " has no trigger: nothing turns it on.",
                    switching.triggerFuse(), null, Findings.computed(), "Choose the part its trigger wire comes from: a fused way that is live only when it shall be on.");
            return;
        }
        if (installation.isOnTheWay(i, from)) {
            findings.add(
                    Check.TRIGGER, i, false, Verdict.STOP,
                    findings.title(i) + " takes its trigger from " + findings.title(from) + ", behind itself: once off it cannot turn on, once on it cannot turn off.",
                    switching.triggerFuse(), null, Findings.computed(), "Take the trigger from a part that is live without it.");
            return;
        }
        addReach(i, switching.device() == Switching.Device.RELAY);
        addWire(i, switching);
    }

    private void addReach(int i, boolean relay) {
        Row row = SwitchFigures.leastTrigger(relay);
        Quantity least = row.quantity("value", Units.VOLT);
        for (Solved solved : solution.lowest()) {
            if (solved.exists()) {
                Quantity volts = Quantity.of(solved.triggerVolts(i), Units.VOLT);
                boolean passed = volts.base() >= least.base();
                findings.add(
                        Check.TRIGGER, i, passed, Verdict.STOP,
                        "With the battery nearly empty " + volts.text(3) + " reach the trigger of " + findings.title(i) + ", "
                                + (passed ? "above" : "below") + " the " + least.text() + " that "
                                + (relay ? "a relay of the 70 A class" : "a logic-level input") + " needs at least.",
                        volts, least, row.source(), "Take a thicker trigger wire or a shorter way; look up what your own part needs.");
                return;
            }
        }
    }

    /** The wire is taken as of the lowest insulation rating. source: 33 CFR 183.425 Table 5. */
    private void addWire(int i, Switching switching) {
        Row row = AmpacityRuleSet.BOAT.row(switching.triggerSize());
        if (row == null) {
            findings.caution(
                    Check.TRIGGER, i,
                    "The trigger wire of " + findings.title(i) + ", " + switching.triggerSize().text() + ", has too little copper for Table 5 of 33 CFR: its "
                            + "ampacity was not checked.",
                    switching.triggerFuse(), Findings.computed(), "Hold the fuse-link of " + switching.triggerFuse().text() + " against the cable maker's data.");
            return;
        }
        Quantity nominal = Quantity.of(12, Units.VOLT);
        RatedCurrent rated = AmpacityRuleSet.BOAT.at(row, new Surroundings(Insulation.T60, false, null, 2, nominal));
        boolean passed = Findings.within(switching.triggerFuse(), rated.value());
        findings.add(
                Check.TRIGGER, i, passed, Verdict.STOP,
                "The trigger wire of " + findings.title(i) + ", " + switching.triggerSize().text() + ", is fused at " + switching.triggerFuse().text()
                        + ", " + Findings.withinOrAbove(passed) + " the " + rated.value().text() + " it may carry with 60 °C insulation.",
                switching.triggerFuse(), rated.value(), rated.row().source(), "Take a smaller fuse-link; 2 A is common for a trigger.");
    }
}
