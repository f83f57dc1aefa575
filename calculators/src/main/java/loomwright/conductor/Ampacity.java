package loomwright.conductor;

import java.util.Map;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/**
 * The current a conductor may carry without pause, by one rule set.
 *
 * <p>I_z = I_t × k_a × k_b × k_own: the current of the table, the factors for warm surroundings and for conductors together, and one of the reader's own. Holds under
 * the conditions of the table chosen. Where the table does not go so far, the working says what the conductor carries at most.
 *
 * @source 33 CFR 183.425 Table 5; FAA AC 43.13-1B Table 11-9; Lessons in Electric Circuits, chapter 12, with NEC factors; BS 7671 Table
 *     4F3A; a trade page on towing-electrics cable
 */
public final class Ampacity implements Calculator {
    @Override
    public Description description() {
        return AmpacityFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        AmpacityRuleSet rules = AmpacityRuleSet.of(entries.option("rule-set"));
        Surroundings around = Surroundings.of(entries);
        CarryingCapacity capacity = CapacitySteps.showByTable(entries, working);
        RatedCurrent rated = capacity.rated();
        Quantity ampacity = capacity.value();
        working.result(capacity.isRated() ? "ampacity" : "at-most", ampacity);
        working.result("table-current", rated.tableCurrent());
        if (rated.warmth() != null) {
            working.result("warmth-factor", rated.values().of(AmpacitySymbols.WARMTH_FACTOR));
        }
        if (rated.bundle() != null) {
            working.result("bundle-factor", rated.values().of(AmpacitySymbols.BUNDLE_FACTOR));
        }
        if (entries.has("own-factor")) {
            working.result("own-factor", entries.quantity("own-factor"));
        }
        if (entries.has("design-current")) {
            load(working, entries.quantity("design-current"), capacity, ampacity);
        }
        AmpacityFindings.conditions(working, rules, around, capacity);
        CapacitySteps.slips(working, capacity);
        working.next("fuse-choice", CarryingCapacity.FUSE_QUESTION, carried(entries));
    }

    private static void load(WorkingBuilder working, Quantity entered, CarryingCapacity capacity, Quantity ampacity) {
        Quantity current = working.convert("Turn the design current into amperes", entered, Units.AMPERE, "The ampacity is in amperes.");
        if (capacity.isRated()) {
            working.result("loading-percent", working.compute(
                    "See what share of the ampacity is used", AmpacityFormulas.LOADING,
                    Values.of(Symbols.CURRENT, current).with(AmpacitySymbols.AMPACITY, ampacity), Units.PERCENT,
                    "Above 100 % the insulation gets hotter than it is made for."));
        }
        AmpacityFindings.load(working, "The design current", current, capacity);
    }

    private static Map<String, String> carried(Entries entries) {
        Map<String, String> carried = CapacitySteps.carried(entries);
        carried.put("size", entries.quantity("size").text());
        if (entries.has("design-current")) {
            carried.put("design-current", entries.quantity("design-current").text());
        }
        return carried;
    }
}
