package loomwright.switching;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Checks of a trigger loop. */
final class TriggerFindings {
    private TriggerFindings() {}

    static void add(WorkingBuilder working, Entries entries, boolean relay, Quantity atTrigger, Quantity loading) {
        if (relay) {
            Row operate = CoilFormulas.relay("70-a-operate");
            reaches(working, atTrigger, operate, "at which a 12 V relay of the 70 A class must have pulled in",
                    "Take a thicker trigger wire or a shorter way, or a relay that pulls in earlier.");
            coilRange(working, entries);
        } else {
            reaches(working, atTrigger, SwitchFindings.solidState("trigger-voltage"), "that a logic-level input needs at least",
                    "Take a thicker trigger wire or a shorter way.");
        }
        carries(working, loading);
        fuse(working, entries.quantity(TriggerLoop.FUSE.key()));
    }

    private static void reaches(WorkingBuilder working, Quantity atTrigger, Row row, String limitIs, String remedy) {
        Quantity least = row.quantity("value", Units.VOLT);
        boolean passed = atTrigger.base() >= least.base();
        working.finding(new Finding(
                passed ? Verdict.PASSED : Verdict.STOP,
                "At the lowest supply " + atTrigger.text(3) + " reach the trigger, " + (passed ? "above" : "below") + " the " + least.text() + " "
                        + limitIs + ".",
                atTrigger, least, row.source(), passed ? "" : remedy));
    }

    private static void coilRange(WorkingBuilder working, Entries entries) {
        Row row = CoilFormulas.relay("20-a-coil-voltage");
        Quantity most = row.quantity("value-to", Units.VOLT);
        Quantity highest = entries.quantity(TriggerLoop.HIGHEST.key());
        boolean passed = highest.base() <= most.base();
        working.finding(new Finding(
                passed ? Verdict.PASSED : Verdict.CAUTION,
                "The highest supply of " + highest.text() + " is " + (passed ? "within" : "above") + " the " + most.text()
                        + " that one 12 V relay allows on its coil.",
                highest, most, row.source(), passed ? "" : "Look up the coil voltage range of your relay."));
    }

    /** source: NEC 210.20(A), a mains rule that 12 V work has borrowed. */
    private static void carries(WorkingBuilder working, Quantity loading) {
        Row rule = PublishedTables.fuseContinuousLoading().row("nec-210-20-a");
        Quantity most = rule.quantity("load");
        boolean passed = loading.base() <= most.base();
        working.finding(new Finding(
                passed ? Verdict.PASSED : Verdict.CAUTION,
                "The trigger loads its fuse-link to " + loading.text(3) + "; for hours on end " + most.text() + " of the rating is the most.",
                loading, most, rule.source(), passed ? "" : "Take the next larger fuse-link that the wire still allows."));
    }

    private static void fuse(WorkingBuilder working, Quantity rating) {
        Row row = PublishedTables.tradeFacts().row("trigger-fuse");
        Quantity usual = row.quantity("value", Units.AMPERE);
        boolean passed = rating.base() <= usual.base();
        working.finding(new Finding(
                passed ? Verdict.PASSED : Verdict.CAUTION,
                "The trigger is fused at " + rating.text() + "; " + usual.text() + " is common.", rating, usual, row.source(),
                passed ? "" : "Check that the thin trigger wire carries what this fuse-link lets through: see the calculator of fuse-links."));
    }
}
