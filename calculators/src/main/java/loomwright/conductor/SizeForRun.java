package loomwright.conductor;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Candidate;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/**
 * The thinnest standard size that passes drop, ampacity and the fuse-link.
 *
 * <p>r ≤ U_lim/(I × L), or CM ≥ 10.75 × I × L/U_lim, with L out and back; I ≤ I_z; fuse-link ≤ I_z, or 150 % of it by 33 CFR
 * 183.455. Sizes of the table of the kind chosen; ampacity of the one rule set chosen.
 *
 * @source table of the kind chosen; tables of ampacity; ABYC E-11 as quoted; 33 CFR 183.455(c)(1)
 */
public final class SizeForRun implements Calculator {
    @Override
    public Description description() {
        return RunFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        RunNeed need = RunNeed.of(entries, working);
        RunChecks checks = RunChecks.of(entries, need);
        ConductorKind kind = ConductorKind.of(entries.option("conductor"));
        Quantity temperature = entries.quantity("temperature");
        List<RunSize> series = RunSize.series(kind, temperature);
        RunSize chosen = choose(working, kind, series, checks);
        working.result(
                need.byArea() ? "least-area" : "highest-resistance-per-metre",
                need.values().of(need.byArea() ? RunFormulas.LEAST : RunFormulas.HIGHEST));
        if (chosen == null) {
            RunFindings.none(working, kind, series, checks);
        } else {
            state(working, chosen, kind, checks, temperature);
            RunFindings.drop(working, need, chosen, working.stated("drop"));
            working.next("fuse-choice", CarryingCapacity.FUSE_QUESTION, carried(entries, chosen, checks));
        }
        RunSlips.add(working, entries, series, chosen, checks);
    }

    private static RunSize choose(WorkingBuilder working, ConductorKind kind, List<RunSize> series, RunChecks checks) {
        List<Candidate> candidates = new ArrayList<>();
        RunSize chosen = null;
        for (RunSize size : series) {
            if (chosen == null) {
                chosen = checks.passes(size) ? size : null;
                candidates.add(checks.judged(size, chosen != null));
            }
        }
        working.choose(
                "Go up the sizes to the first that passes", candidates, chosen == null ? null : chosen.answer(),
                "Every check has to pass with the same size.", kind.table().source());
        return chosen;
    }

    private static void state(WorkingBuilder working, RunSize chosen, ConductorKind kind, RunChecks checks, Quantity temperature) {
        Quantity drop = checks.need().showDrop(working, kind, chosen, temperature);
        Quantity share = working.compute(
                "See what share of the supply that is", DropFormulas.SHARE, checks.need().values().with(Symbols.DROP, drop), Units.PERCENT,
                "The limits of the rule sets are shares of the supply voltage.");
        working.result(chosen.output(), chosen.answer());
        working.result("drop", drop);
        working.result("drop-percent", share);
        if (checks.rules() == null) {
            RunFindings.ampacityLeftOut(working, chosen);
            return;
        }
        CarryingCapacity capacity = checks.capacity(chosen);
        StandInStep.show(working, chosen.ampacitySize(), capacity.rated().row());
        Quantity ampacity = capacity.rated().show(working);
        working.result("ampacity", ampacity);
        AmpacityFindings.load(working, chosen.loadedBy(), checks.need().current(), capacity);
        if (checks.fuse() != null) {
            Quantity limit = working.compute(
                    "Find the highest rating of a fuse-link on it", RunFormulas.FUSE_ALLOWED,
                    Values.of(RunFormulas.FUSE_SHARE, checks.fuseShare()).with(AmpacitySymbols.AMPACITY, ampacity), Units.AMPERE,
                    "The fuse-link guards the conductor, so the conductor sets its limit.");
            working.result("fuse-limit", limit);
            RunFindings.fuse(working, checks, limit, capacity);
        }
        AmpacityFindings.conditions(working, checks.rules(), checks.around(), capacity);
    }

    private static Map<String, String> carried(Entries entries, RunSize chosen, RunChecks checks) {
        Map<String, String> carried = new HashMap<>();
        carried.put("design-current", entries.quantity("current").text());
        carried.put("size", chosen.carriedText());
        if (checks.rules() != null) {
            carried.putAll(CapacitySteps.carried(entries));
        }
        return carried;
    }
}
