package loomwright.protection;

import static loomwright.protection.FuseSymbols.AMPACITY;
import static loomwright.protection.FuseSymbols.DESIGN;
import static loomwright.protection.FuseSymbols.HIGHEST;
import static loomwright.protection.FuseSymbols.LEAST;
import static loomwright.protection.FuseSymbols.LOAD_SHARE;
import static loomwright.protection.FuseSymbols.RULE_SHARE;
import static loomwright.protection.FuseSymbols.SHEET_RATING;
import static loomwright.protection.FuseSymbols.TABLE_CURRENT;
import static loomwright.protection.FuseSymbols.WARM_CURRENT;
import static loomwright.protection.FuseSymbols.WARM_SHARE;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.WorkingBuilder;

/** The two limits of a fuse-link: what the conductor allows, and what the load asks for. */
final class FuseSteps {
    private FuseSteps() {}

    /** The highest rating that still guards the conductor; it has none while nobody knows what the conductor carries. */
    static Values highest(WorkingBuilder working, FuseCase choice, Values values) {
        if (!choice.capacity().isRated()) {
            return values;
        }
        Values more = values.with(AMPACITY, choice.capacity().value()).with(RULE_SHARE, choice.rules().shareOf(choice.capacity().isByTableFive()));
        if (choice.capacity().tableCurrent() != null) {
            more = more.with(TABLE_CURRENT, choice.capacity().tableCurrent());
        }
        Quantity highest = working.compute(
                "Find the highest rating the rule allows", FuseFormulas.HIGHEST_BY_RULE, more, Units.AMPERE, choice.rules().why(choice.allowsMore()),
                choice.rules().source());
        return more.with(HIGHEST, highest);
    }

    /** The least rating that carries the load for as long as it runs. */
    static Values least(WorkingBuilder working, FuseCase choice, Values values) {
        Values more = values;
        if (choice.continuous()) {
            more = more.with(LOAD_SHARE, working.lookUp(
                    "Read how much of its rating a fuse-link may carry for hours", LOAD_SHARE, continuousRule(), "load",
                    "The NEC says so for mains, with a load of three hours or more; the 12 V trade has borrowed the rule."));
        }
        if (choice.isWarm()) {
            more = warm(working, choice, more);
        }
        Quantity least = working.compute(
                leastWords(choice), FuseFormulas.least(choice.continuous(), choice.isWarm()), more, Units.AMPERE,
                "A fuse-link loaded close to its rating runs hot and may open without a fault.");
        return more.with(LEAST, least);
    }

    private static Values warm(WorkingBuilder working, FuseCase choice, Values values) {
        if (choice.warmShare() != null) {
            return values.with(WARM_SHARE, choice.warmShare());
        }
        Row row = choice.warmRow();
        boolean exact = row.quantity("ambient").base() == choice.ambient().base();
        Quantity current = working.lookUp(
                "Read what a " + row.quantity("rating").text() + " fuse-link carries at " + row.name(), WARM_CURRENT, row, "current",
                exact
                        ? "A fuse-link melts by heat, so in a warm place it carries less."
                        : "A fuse-link melts by heat. The sheet has no row for " + choice.ambient().text()
                                + ", so the next hotter one is taken; nothing is read between the rows.");
        Values more = values.with(WARM_CURRENT, current).with(SHEET_RATING, row.quantity("rating"));
        Quantity share = working.compute(
                "See what share of the rating is left", FuseFormulas.WARM, more, Units.PERCENT,
                "The same share is taken for other ratings.",
                row.source());
        return more.with(WARM_SHARE, share);
    }

    private static String leastWords(FuseCase choice) {
        if (choice.continuous()) {
            return choice.isWarm() ? "Divide the design current by both shares" : "Divide the design current by that share";
        }
        return choice.isWarm() ? "Divide the design current by that share" : "Take the design current as the least rating";
    }

    static Row continuousRule() {
        return PublishedTables.fuseContinuousLoading().row("nec-210-20-a");
    }

    static Quantity design(WorkingBuilder working, Quantity entered) {
        return working.convert("Turn the design current into amperes", entered, Units.AMPERE, "Fuse-links are rated in amperes.");
    }
}
