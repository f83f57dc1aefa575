package loomwright.protection;

import static loomwright.protection.FuseSymbols.CHOSEN;
import static loomwright.protection.FuseSymbols.DESIGN;
import static loomwright.protection.FuseSymbols.HIGHEST;
import static loomwright.protection.FuseSymbols.LEAST;

import loomwright.conductor.CapacitySteps;
import loomwright.conductor.CarryingCapacity;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/**
 * The rating of a fuse-link: at least what the load asks for, at most what the conductor allows.
 *
 * <p>least = design current ÷ (80 % for a continuous load × share left in a warm place); highest = 100 % of what the conductor may carry where it lies, or 150 % of
 * an ampacity of Table 5 of 33 CFR. Holds for direct current below 50 V. Starting currents, opening times and places are other questions.
 *
 * @source ampacity: {@link CapacitySteps}; 33 CFR 183.455(c)(1); NEC 210.20(A); re-rating sheet of a 40 A large blade fuse-link
 */
public final class FuseChoice implements Calculator {
    @Override
    public Description description() {
        return FuseFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity design = FuseSteps.design(working, entries.quantity("design-current"));
        CarryingCapacity capacity = CapacitySteps.show(entries, working);
        FuseCase choice = FuseCase.of(entries, capacity);
        Values values = FuseSteps.highest(working, choice, Values.of(DESIGN, design));
        values = FuseSteps.least(working, choice, values);
        choice = choice.with(values);
        Row chosen = choice.conductorCarriesLoad() ? FuseSeries.choose(working, choice.type(), choice.limits()) : null;

        working.result(capacity.isRated() ? "ampacity" : "at-most", capacity.value());
        if (capacity.isRated()) {
            working.result("highest-rating", values.of(HIGHEST));
        }
        working.result("least-rating", values.of(LEAST));
        if (chosen != null) {
            Quantity rating = chosen.quantity("rating");
            choice = choice.with(values.with(CHOSEN, rating));
            Quantity loading = working.compute(
                    "See what share of the rating the load takes", FuseFormulas.LOADING_OF_CHOSEN, choice.values(), Units.PERCENT,
                    "The lower it is, the cooler the fuse-link runs.");
            working.result("chosen-rating", rating);
            working.result("loading-percent", loading);
            FuseFindings.addChosen(working, choice, chosen, loading);
        } else {
            FuseFindings.addNone(working, choice);
        }
        FuseFindings.addAlways(working, entries, choice);
        FuseSlips.add(working, choice, chosen != null);
        working.next(
                "voltage-drop", "What voltage does this conductor lose on the way?",
                "current", design.text(), "size", capacity.size().text(), "conductor", kind(capacity.size()));
    }

    /** The kind of conductor that has this size in its table, for the question that follows. */
    private static String kind(Quantity size) {
        if (size.unit() == Units.AWG && PublishedTables.necCh9Table8().find("size", size) != null) {
            return "nec-stranded";
        }
        boolean metric = size.unit() == Units.SQUARE_MILLIMETRE && PublishedTables.iso67221().find("size", size) != null;
        return metric ? "iso-6722-1" : "copper-by-area";
    }
}
