package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.source.Standing;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Holds a voltage drop against the allowances of the rule sets. */
final class DropFindings {
    private DropFindings() {}

    static void add(WorkingBuilder working, Entries entries, Quantity drop, Quantity supply) {
        against(working, row("abyc-main"), drop, supply, "Main feeders, navigation lights, bilge blowers and electronics");
        against(working, row("abyc-other"), drop, supply, "Lighting and other circuits that are not critical");
        if (DropMethod.of(entries.option("method")) == DropMethod.RESISTIVITY_0_0164) {
            working.finding(new Finding(
                    Verdict.CAUTION, "The constant 0.0164 is below that of copper at 20 °C, so the true drop is at least 5 % more.", drop,
                    null, DropFormulas.METRIC.source(), "Work it out again from the table of the conductor."));
        }
        warnOfMemory(working, entries, drop);
    }

    private static void against(WorkingBuilder working, Row allowance, Quantity drop, Quantity supply, String circuits) {
        Quantity share = allowance.quantity("allowance");
        Quantity limit = Quantity.of(share.base() * supply.value(), supply.unit());
        boolean passed = drop.base() <= limit.base() * (1 + 1e-9);
        String words = circuits + ": the drop of " + drop.text(3) + " is " + (passed ? "within" : "above") + " " + limit.text(3) + ", "
                + share.text() + " of " + supply.text() + ".";
        working.finding(new Finding(
                passed ? Verdict.PASSED : Verdict.CAUTION, words, drop, limit, allowance.source(),
                passed ? "" : "If your circuit is one of these, take the next thicker conductor or a shorter route."));
    }

    private static void warnOfMemory(WorkingBuilder working, Entries entries, Quantity drop) {
        ConductorKind kind = ConductorKind.of(entries.option("conductor"));
        boolean tabled = DropMethod.of(entries.option("method")) == DropMethod.TABLE && kind.table() != null;
        if (!tabled || !entries.has("size")) {
            return;
        }
        Source source = SizeRow.of(kind.table(), entries.quantity("size"), kind.sizesIn()).source();
        if (source.standing() == Standing.FROM_MEMORY) {
            working.finding(new Finding(
                    Verdict.CAUTION, "The resistance of this size is from memory: no one could look it up.", drop, null, source,
                    "Take it from the cable maker's data sheet before you rely on the drop."));
        }
    }

    private static Row row(String key) {
        return PublishedTables.voltageDropAllowance().row(key);
    }
}
