package loomwright.conductor;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.source.Standing;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** The checks of the size chosen for a run, or why there is none. */
final class RunFindings {
    private RunFindings() {}

    static void drop(WorkingBuilder working, RunNeed need, RunSize chosen, Quantity drop) {
        Source row = chosen.row().source();
        boolean memory = row.standing() == Standing.FROM_MEMORY;
        String words = "The drop of " + drop.text(3) + " with " + chosen.name() + " is within " + need.limit().text(3) + ".";
        working.finding(
                memory
                        ? new Finding(
                                Verdict.CAUTION, words + " Its resistance is from memory: no one could look it up.", drop, need.limit(),
                                row,
                                "Take the resistance from the cable maker's data sheet.")
                        : new Finding(Verdict.PASSED, words, drop, need.limit(), limitSource(need), ""));
    }

    /** The rule that names the limit, if it is one of those in print. */
    private static Source limitSource(RunNeed need) {
        double share = need.limit().base() / need.values().of(Symbols.SUPPLY_VOLTAGE).base();
        for (String key : List.of("abyc-main", "abyc-other")) {
            Row row = PublishedTables.voltageDropAllowance().row(key);
            if (Math.abs(row.quantity("allowance").base() - share) < 1e-9) {
                return row.source();
            }
        }
        return Source.of(Document.COMPUTED, "the limit entered");
    }

    static void fuse(WorkingBuilder working, RunChecks checks, Quantity limit, RatedCurrent rated) {
        boolean allowsMore = checks.fuseShare().base() > 1;
        working.finding(new Finding(
                Verdict.PASSED,
                "The fuse-link of " + checks.fuse().text() + " is within the " + limit.text() + " that the conductor allows.",
                checks.fuse(), limit,
                allowsMore ? fuseRule().source() : rated.row().source(), ""));
        if (checks.fuse().base() > rated.value().base() * (1 + 1e-9)) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "The fuse-link of " + checks.fuse().text() + " is above the ampacity of " + rated.value().text()
                            + ": the rule allows it, but a small overload may last.",
                    checks.fuse(), rated.value(), rated.row().source(), "Where the load could grow, take a thicker conductor."));
        }
    }

    static void ampacityLeftOut(WorkingBuilder working, RunSize chosen) {
        working.finding(new Finding(
                Verdict.CAUTION, chosen.name() + " was chosen by drop alone: whether it may carry the current was not looked at.",
                chosen.size().in(Units.SQUARE_MILLIMETRE), null, chosen.row().table().source(),
                "Choose a rule set on ampacity. On a short run the ampacity decides, not the drop."));
    }

    static void none(WorkingBuilder working, ConductorKind kind, List<RunSize> series, RunChecks checks) {
        RunSize thickest = series.get(series.size() - 1);
        String reason = checks.judged(thickest, false).reason();
        boolean unlisted = checks.rules() != null && !listsAny(series, checks);
        String remedy = unlisted
                ? "This rule set lists none of these sizes: take cable named by AWG, or a rule set that lists mm². No ampacity is made up "
                        + "here."
                : "Shorten the route, share the load among several runs, allow more drop where that is right, or take another kind of "
                        + "conductor.";
        working.finding(new Finding(
                Verdict.STOP, "No size of this series passes. The thickest, " + thickest.name() + ": " + (reason.isEmpty() ? "no" : reason)
                        + ".",
                checks.need().current(), null, kind.table().source(), remedy));
    }

    private static boolean listsAny(List<RunSize> series, RunChecks checks) {
        for (RunSize size : series) {
            if (checks.rated(size) != null) {
                return true;
            }
        }
        return false;
    }

    /** The rule that lets a fuse-link be rated above the ampacity. */
    static Row fuseRule() {
        return PublishedTables.overcurrentRating().row("33-cfr-below-50-v");
    }
}
