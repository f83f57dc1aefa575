package loomwright.switching;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.Documents;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
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

    /** What the load asks of a contact. */
    static Finding duty(Entries entries, Values values) {
        return SwitchDuty.check(
                "the switch", entries.quantity(SwitchCompare.RATING.key()), Source.of(Document.COMPUTED, "held against the rating you entered"),
                values.of(SwitchSymbols.CURRENT), SwitchedLoad.CHOICES.of(entries.option("switched-load")), values.of(SwitchSymbols.SUPPLY),
                SwitchCompare.RATING.key());
    }

    private static void against(WorkingBuilder working, Quantity current, String item, String where) {
        Row row = CoilFormulas.relay(item);
        working.finding(Comparison.of("The current switched", current)
                .atMost(row.quantity("value", Units.AMPERE), "what one 70 A class relay carries all the time " + where, row.source())
                .otherwise(Verdict.CAUTION, "Look for the continuous current of your relay at its warmest place, not the number on its lid.")
                .finding());
    }
}
