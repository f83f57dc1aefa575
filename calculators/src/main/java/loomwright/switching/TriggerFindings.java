package loomwright.switching;

import loomwright.conductor.AmpacityRuleSet;
import loomwright.conductor.CarryingCapacity;
import loomwright.conductor.ConductorFigures;
import loomwright.conductor.ConductorKind;
import loomwright.conductor.Insulation;
import loomwright.conductor.Surroundings;
import loomwright.protection.DeviceKind;
import loomwright.protection.DeviceRule;
import loomwright.protection.Guarded;
import loomwright.protection.Holding;
import loomwright.protection.RuleSet;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.Sentence;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Checks of a trigger loop. */
final class TriggerFindings {
    private TriggerFindings() {}

    static void add(WorkingBuilder working, Entries entries, boolean relay, Quantity atTrigger, Quantity loading) {
        if (relay) {
            Row operate = CoilFormulas.relay("70-a-operate");
            reaches(working, atTrigger, operate, "that at which a 12 V relay of the 70 A class must have pulled in",
                    "Take a thicker trigger wire or a shorter way, or a relay that pulls in earlier.");
            coilRange(working, entries);
        } else {
            reaches(working, atTrigger, SwitchFindings.solidState("trigger-voltage"), "what a logic-level input needs at least",
                    "Take a thicker trigger wire or a shorter way.");
        }
        carries(working, loading);
        fuse(working, entries);
    }

    private static void reaches(WorkingBuilder working, Quantity atTrigger, Row row, String limitIs, String remedy) {
        working.finding(Comparison.of("What reaches the trigger at the lowest supply", atTrigger)
                .atLeast(row.quantity("value", Units.VOLT), limitIs, row.source())
                .otherwise(Verdict.STOP, remedy)
                .finding());
    }

    private static void coilRange(WorkingBuilder working, Entries entries) {
        Row row = CoilFormulas.relay("20-a-coil-voltage");
        working.finding(Comparison.of("The highest supply", entries.quantity(TriggerLoop.HIGHEST.key()))
                .atMost(row.quantity("value-to", Units.VOLT), "what one 12 V relay allows on its coil", row.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Look up the coil voltage range of your relay.")
                .finding());
    }

    /** source: NEC 210.20(A), a mains rule that 12 V work has borrowed. */
    private static void carries(WorkingBuilder working, Quantity loading) {
        Row rule = Holding.row(DeviceKind.BLADE);
        working.finding(Comparison.of("The trigger's share of its fuse-link", loading)
                .atMost(rule.quantity("load"), "the most for hours on end", rule.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Take the next larger fuse-link that the wire still allows.")
                .finding());
    }

    /** Nobody said what the wire may carry: by the table for its copper, as a careful person takes it. */
    private static void byTable(WorkingBuilder working, Entries entries, DeviceRule rule) {
        Quantity copper = ConductorFigures.copper(ConductorKind.of(entries.option("conductor")), entries.quantity(TriggerLoop.RUN.sizeField().key()));
        CarryingCapacity capacity = CarryingCapacity.of(copper, AmpacityRuleSet.BOAT, Surroundings.unsaid(Insulation.T60));
        Finding guarded = rule.guardsConductor(
                "the trigger wire", capacity, RuleSet.CONDUCTOR_AMPACITY,
                Sentence.of("Take a smaller fuse-link, or a thicker trigger wire."));
        working.finding(guarded.verdict() == Verdict.NOT_KNOWN
                ? rule.unknown(Guarded.TRIGGER_WIRE, "the trigger wire", TriggerLoop.AMPACITY.key(), capacity.source())
                : guarded);
    }

    /** The fuse-link guards the trigger wire. */
    private static void fuse(WorkingBuilder working, Entries entries) {
        Quantity rating = entries.quantity(TriggerLoop.FUSE.key());
        DeviceRule rule = DeviceRule.of("The trigger's fuse-link", rating);
        Quantity ampacity = entries.quantity(TriggerLoop.AMPACITY.key());
        if (ampacity == null) {
            byTable(working, entries, rule);
        } else {
            Source typed = Source.of(Document.COMPUTED, "held against the figure you entered");
            Comparison guarded = rule.guards(Guarded.TRIGGER_WIRE, "the trigger wire", ampacity, typed);
            boolean assumed = entries.isAssumed(TriggerLoop.FUSE.key());
            working.finding((assumed ? guarded.assuming("a fuse-link where the wire leaves its supply") : guarded).finding());
        }
        Row row = PublishedTables.tradeFacts().row("trigger-fuse");
        Comparison usual = Comparison.of("The trigger's fuse-link", rating)
                .atMost(row.quantity("value", Units.AMPERE), "what is common", row.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Check that the thin trigger wire carries what this fuse-link lets through.");
        if (!usual.holds()) {
            working.finding(usual.finding());
        }
    }
}
