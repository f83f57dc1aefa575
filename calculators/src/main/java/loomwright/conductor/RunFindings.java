package loomwright.conductor;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** The checks of the size chosen for a run, or why there is none. */
final class RunFindings {
    private RunFindings() {}

    static void drop(WorkingBuilder working, RunNeed need, RunSize chosen, Quantity drop) {
        working.finding(Comparison.of("The drop with " + chosen.name(), drop)
                .atMost(need.limit(), "the drop allowed", limitSource(need))
                .restingOn(chosen.row().source())
                .ifClose("A warmer cable or one more joint takes it over: the next thicker size leaves room.")
                .settledBy(ConductorFindings.resistance(chosen.name()))
                .finding());
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

    static void fuse(WorkingBuilder working, RunChecks checks, Quantity limit, CarryingCapacity capacity) {
        boolean allowsMore = checks.fuseShare().base() > 1;
        Comparison allowed = Comparison.of("The rating of the fuse-link", checks.fuse())
                .atMost(limit, "what the conductor allows", allowsMore ? fuseRule().source() : capacity.source())
                .restingOn(capacity.source())
                .exact()
                .otherwise(Verdict.STOP, "Take a smaller fuse-link or a thicker conductor.");
        working.finding((capacity.assumed().isEmpty() ? allowed : allowed.assuming(capacity.assumed())).finding());
        Comparison own = Comparison.of("The rating of the fuse-link", checks.fuse())
                .atMost(capacity.value(), "the ampacity; the rule allows it, but a small overload may last. The ampacity is", capacity.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Where the load could grow, take a thicker conductor.");
        if (!own.holds()) {
            working.finding(own.finding());
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
                ? "This rule set lists none of these sizes for such a place: take another rule set, or keep the cable cooler. No ampacity is made up here."
                : "Shorten the route, share the load among several runs, allow more drop where that is right, or take another kind of "
                        + "conductor.";
        working.finding(new Finding(
                Verdict.STOP, "No size of this series passes. The thickest, " + thickest.name() + ": " + (reason.isEmpty() ? "no" : reason)
                        + ".",
                checks.need().current(), null, kind.table().source(), remedy));
    }

    private static boolean listsAny(List<RunSize> series, RunChecks checks) {
        for (RunSize size : series) {
            if (checks.isListed(size)) {
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
