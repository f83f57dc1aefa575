package loomwright.protection;

import static loomwright.protection.FuseSymbols.AMPACITY;
import static loomwright.protection.FuseSymbols.CHOSEN;
import static loomwright.protection.FuseSymbols.DESIGN;
import static loomwright.protection.FuseSymbols.HIGHEST;
import static loomwright.protection.FuseSymbols.LEAST;

import java.util.Map;
import loomwright.conductor.TableFive;
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
 * <p>least = design current ÷ (80 % for a continuous load × share left in a warm place); highest = 150 % or 100 % of the ampacity. Holds for
 * direct current below 50 V and conductors of 18 AWG to 4/0. Starting currents, opening times and places are other questions.
 *
 * @source 33 CFR 183.425 Table 5 and note 1; 33 CFR 183.455(c)(1); NEC 210.20(A); re-rating sheet of a 40 A large blade fuse-link
 */
public final class FuseChoice implements Calculator {
    @Override
    public Description description() {
        return FuseFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity design = FuseSteps.design(working, entries.quantity("design-current"));
        FuseCase choice = FuseCase.of(entries, TableFive.row(working, entries.quantity("size")));
        Values values = FuseSteps.ampacity(working, choice).with(DESIGN, design);
        values = FuseSteps.highest(working, choice, values);
        values = FuseSteps.least(working, choice, values);
        choice = choice.with(values);
        Row chosen = choice.conductorCarriesLoad() ? FuseSeries.choose(working, choice.type(), choice.limits()) : null;

        working.result("ampacity", values.of(AMPACITY));
        working.result("highest-rating", values.of(HIGHEST));
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
                Map.of("current", design.text(), "size", choice.size().text(), "conductor", kind(choice.size())));
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
