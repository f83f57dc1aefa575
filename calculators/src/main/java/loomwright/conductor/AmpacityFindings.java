package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** The checks of an ampacity: against the current, and what it takes for granted. */
final class AmpacityFindings {
    private AmpacityFindings() {}

    static void load(WorkingBuilder working, Quantity current, Quantity ampacity, Row row) {
        boolean passed = current.base() <= ampacity.base() * (1 + 1e-9);
        String words = "The design current of " + current.text(3) + " is " + (passed ? "within" : "above") + " the ampacity of "
                + ampacity.text() + ".";
        working.finding(new Finding(
                passed ? Verdict.PASSED : Verdict.STOP, words, current, ampacity, row.source(),
                passed ? "" : "Take a thicker conductor, insulation of a higher rating, or less current."));
    }

    static void conditions(
            WorkingBuilder working, AmpacityRuleSet rules, Surroundings around, RatedCurrent rated, Quantity ampacity) {
        working.finding(new Finding(
                Verdict.CAUTION, ampacity.text() + " holds under the conditions of its table. " + rules.conditions(), ampacity, null,
                rated.row().source(), "If yours differ, choose the rule set that fits; do not mix figures and factors of two."));
        if (rules == AmpacityRuleSet.FREE_AIR && around.together() > 1) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    ampacity.text() + " is for a single conductor with air all round. Two or three side by side are not covered.", ampacity,
                    null, rated.row().source(), "Keep the conductors apart, or choose a rule set that covers them."));
        }
        if (rated.bundle() != null) {
            bundle(working, around, rated, ampacity);
        }
    }

    private static void bundle(WorkingBuilder working, Surroundings around, RatedCurrent rated, Quantity ampacity) {
        Row rule = PublishedTables.no33Cfr183Rules().row("bundling");
        Quantity bundled = rated.valueBundled();
        String opening = around.together() + " conductors together at " + around.voltage().text() + ": the bundling factor of 33 CFR ";
        if (rated.bundleBinds()) {
            working.finding(new Finding(
                    Verdict.CAUTION, opening + "is compulsory from 50 V up and has been used.", ampacity, null, rule.source(),
                    "At 50 V and more this is no longer extra-low-voltage accessory work: leave it to a licensed person."));
        } else {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    opening + "is compulsory only from 50 V up, so it has not been used. With it the conductor would carry "
                            + bundled.text() + " instead of " + ampacity.text() + ".",
                    ampacity, bundled, rule.source(),
                    "Tied tightly together and loaded at the same time, conductors warm each other at any voltage: then stay below "
                            + bundled.text() + ", or space them."));
        }
    }
}
