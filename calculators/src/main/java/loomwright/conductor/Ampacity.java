package loomwright.conductor;

import java.util.HashMap;
import java.util.Map;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;
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
        Quantity size = entries.quantity("size");
        CarryingCapacity capacity = CarryingCapacity.of(size, rules, around).times(entries.quantity("own-factor"));
        if (capacity.kind() == CarryingCapacity.Kind.NOTHING) {
            throw new Refusal(
                    "ambient",
                    "Temperature around the conductor is as high as its insulation may get, " + around.insulation().rating().text()
                            + ", so it can carry nothing there: choose another way for it, or better insulation");
        }
        RatedCurrent rated = capacity.rated();
        StandInStep.show(working, size, rated.row());
        Quantity ampacity = rated.show(working, capacity.isRated());
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
        if (capacity.isRated()) {
            AmpacitySlips.add(working, rules, rated, ampacity);
        }
        working.next("fuse-choice", capacity.fuseQuestion(), carried(entries, rules, around));
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

    private static Map<String, String> carried(Entries entries, AmpacityRuleSet rules, Surroundings around) {
        Map<String, String> carried = new HashMap<>();
        if (entries.has("design-current")) {
            carried.put("design-current", entries.quantity("design-current").text());
        }
        if (rules == AmpacityRuleSet.BOAT) {
            carried.put("size", entries.quantity("size").text());
            carried.put("insulation-temperature", around.insulation().column());
            carried.put("engine-space", around.engineSpace() ? "yes" : "no");
        }
        return carried;
    }
}
