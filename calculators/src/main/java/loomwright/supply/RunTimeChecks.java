package loomwright.supply;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Documents;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Findings and known mistakes of a run time. */
final class RunTimeChecks {
    private RunTimeChecks() {}

    static void addFindings(WorkingBuilder working, Entries entries, Chemistry chemistry, Values values) {
        Quantity current = values.of(Symbols.CURRENT);
        if (chemistry == Chemistry.LEAD_ACID) {
            addRate(working, values);
        } else if (entries.has("temperature")) {
            Cold.addLithiumFindings(working, entries.quantity("temperature"));
        }
        if (entries.has("battery-limit")) {
            working.finding(Comparison.of("The current drawn", current)
                    .atMost(entries.quantity("battery-limit"), "the limit of the battery", SupplyFields.entered())
                    .otherwise(Verdict.STOP, "Draw less at once, or choose a battery that may give more.")
                    .finding());
        }
        if (entries.has("internal-resistance")) {
            addCutOff(working, chemistry, values.of(RunTimeFormulas.UNDER_LOAD));
        }
    }

    private static void addRate(WorkingBuilder working, Values values) {
        working.finding(Comparison.of("The current drawn", values.of(Symbols.CURRENT))
                .atMost(
                        RunTimeFormulas.TWENTY_HOUR_CURRENT.value(values, Units.AMPERE), "that of a 20 h rating",
                        Source.of(Documents.usArmyOrdnanceBatteryLessons(), "OD0010 para 14"))
                .exact()
                .otherwise(Verdict.CAUTION, "A lead-acid battery gives less than its rating here: work it out by Peukert's law.")
                .finding());
    }

    private static void addCutOff(WorkingBuilder working, Chemistry chemistry, Quantity underLoad) {
        Row row = chemistry.cutOff();
        working.finding(Comparison.of("The voltage under load", underLoad)
                .atLeast(row.quantity("value", Units.VOLT), "the end of discharge", row.source())
                .otherwise(
                        Verdict.STOP,
                        "The battery or its management system will end the discharge early: draw less at once, or stop sooner.")
                .finding());
    }

    static void addSlips(WorkingBuilder working, Values values, boolean cold, boolean loaded) {
        working.slip(
                "depth-left-out", "run-time", "The usable depth left out", "This empties the battery, which wears it out.",
                cold ? RunTimeFormulas.DEPTH_LEFT_OUT_COLD : RunTimeFormulas.DEPTH_LEFT_OUT, values);
        working.slip(
                "what-is-left-for-what-is-used", "run-time", "The share that stays in the battery used in place of the share used",
                "Depth of discharge counts what is taken out.", RunTimeFormulas.REST_FOR_DEPTH, values);
        working.slip(
                "divided-by-the-depth", "run-time", "Divided by the depth",
                "Dividing is for choosing a battery; a battery you have gives less than its capacity.", RunTimeFormulas.DIVIDED_BY_DEPTH,
                values);
        if (cold) {
            working.slip(
                    "cold-turned-over", "run-time", "The cold factor used the wrong way round", "Cold makes the run time shorter.",
                    RunTimeFormulas.COLD_TURNED_OVER, values);
            working.slip(
                    "cold-left-out", "run-time", "The cold left out", "A cold lead-acid battery has less to give.",
                    RunTimeFormulas.COLD_LEFT_OUT, values);
        }
        Quantity current = values.of(Symbols.CURRENT);
        working.slip(
                "milliamperes-for-amperes", "run-time", "Milliamperes taken as amperes", "A thousand milliamperes are one ampere.",
                RunTimeFormulas.RUN_TIME, values.with(Symbols.CURRENT, Quantity.of(1000 * current.value(), Units.AMPERE)));
        if (loaded) {
            working.slip(
                    "drop-added", "voltage-under-load", "The inner loss added", "The terminals are below the voltage at rest, not above it.",
                    RunTimeFormulas.ADDED, values);
        }
    }
}
