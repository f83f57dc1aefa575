package loomwright.switching;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Documents;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Checks of a relay and of a solid-state switch. */
final class SwitchFindings {
    private SwitchFindings() {}

    static Row solidState(String item) {
        return PublishedTables.ssrData().row(item);
    }

    static void add(WorkingBuilder working, boolean thyristor, Values values, Quantity drop) {
        Quantity current = values.of(SwitchSymbols.CURRENT);
        if (thyristor) {
            working.finding(new Finding(
                    Verdict.STOP,
                    "A thyristor or triac output never turns d.c. off: it stays on until its current falls below the holding current, and on "
                            + "d.c. that does not happen. It also drops " + drop.text() + " or more.",
                    drop, null, Source.of(Documents.thyristorText(), ""), "Take a switch with a MOS output, made for d.c."));
        }
        against(working, current, "70-a-at-23-c", "at 23 °C");
        against(working, current, "70-a-at-85-c", "at 85 °C");
        working.finding(new Finding(
                Verdict.CAUTION,
                "A solid-state switch that fails mostly stays on. It is not an isolator.", current, null,
                Source.of(Documents.ssrThermalArticles(), ""),
                "Keep the fuse-link and a switch you can see in front of it, and isolate there before you work."));
    }

    private static void against(WorkingBuilder working, Quantity current, String item, String where) {
        Row row = CoilFormulas.relay(item);
        Quantity limit = row.quantity("value", Units.AMPERE);
        boolean passed = current.base() <= limit.base();
        working.finding(new Finding(
                passed ? Verdict.PASSED : Verdict.CAUTION,
                "The current of " + current.text() + " is " + (passed ? "within" : "above") + " the " + limit.text()
                        + " that one 70 A class relay carries all the time " + where + ".",
                current, limit, row.source(), passed ? "" : "Look for the continuous current of your relay at its warmest place, not the number on its lid."));
    }
}
