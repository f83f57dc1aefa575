package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Holds a voltage drop against the allowances of the rule sets. */
final class DropFindings {
    private DropFindings() {}

    static void add(WorkingBuilder working, Entries entries, Quantity drop, Quantity supply) {
        if (entries.has("size")) {
            CapacitySteps.overload(working, ConductorKind.of(entries.option("conductor")), entries.quantity("size"), entries.quantity("current"));
        }
        Source resistance = resistanceFrom(entries);
        against(working, row("abyc-main"), drop, supply, "Main feeders, navigation lights, bilge blowers and electronics: the drop", resistance);
        against(working, row("abyc-other"), drop, supply, "Lighting and other circuits that are not critical: the drop", resistance);
        if (DropMethod.of(entries.option("method")) == DropMethod.RESISTIVITY_0_0164) {
            working.finding(new Finding(
                    Verdict.CAUTION, "The constant 0.0164 is below that of copper at 20 °C, so the true drop is at least 5 % more.", drop,
                    null, DropFormulas.METRIC.source(), "Work it out again from the table of the conductor."));
        }
    }

    private static void against(
            WorkingBuilder working, Row allowance, Quantity drop, Quantity supply, String circuits, Source resistance) {
        Quantity share = allowance.quantity("allowance");
        Quantity limit = Quantity.of(share.base() * supply.value(), supply.unit());
        Comparison comparison = Comparison.of(circuits, drop)
                .atMost(limit, share.text() + " of " + supply.text(), allowance.source())
                .otherwise(Verdict.CAUTION, "If your circuit is one of these, take the next thicker conductor or a shorter route.")
                .settledBy(ConductorFindings.resistance("the conductor"));
        working.finding((resistance == null ? comparison : comparison.restingOn(resistance)).finding());
    }

    /** Where the resistance comes from, if it comes from a table; otherwise null. */
    private static Source resistanceFrom(Entries entries) {
        ConductorKind kind = ConductorKind.of(entries.option("conductor"));
        boolean tabled = DropMethod.of(entries.option("method")) == DropMethod.TABLE && kind.table() != null;
        return tabled && entries.has("size") ? SizeRow.of(kind.table(), entries.quantity("size"), kind.sizesIn()).source() : null;
    }

    private static Row row(String key) {
        return PublishedTables.voltageDropAllowance().row(key);
    }
}
