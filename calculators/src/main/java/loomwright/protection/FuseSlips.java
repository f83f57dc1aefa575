package loomwright.protection;

import static loomwright.protection.FuseSymbols.AMPACITY;
import static loomwright.protection.FuseSymbols.CHOSEN;
import static loomwright.protection.FuseSymbols.DESIGN;
import static loomwright.protection.FuseSymbols.HIGHEST;
import static loomwright.protection.FuseSymbols.LEAST;
import static loomwright.protection.FuseSymbols.LOADING;
import static loomwright.protection.FuseSymbols.LOAD_SHARE;
import static loomwright.protection.FuseSymbols.OTHER_RATING;
import static loomwright.protection.FuseSymbols.RULE_SHARE;
import static loomwright.protection.FuseSymbols.TABLE_CURRENT;
import static loomwright.protection.FuseSymbols.WARM_SHARE;

import loomwright.conductor.CapacitySteps;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.worked.WorkingBuilder;

/** The known mistakes in choosing a fuse-link. */
final class FuseSlips {
    private static final Formula RULE_LEFT_OUT = new Formula(HIGHEST, AMPACITY);
    private static final Formula HALF_AS_MUCH_AGAIN = new Formula(HIGHEST, Expression.number(1.5).times(AMPACITY));
    private static final Formula RULE_ON_TABLE = new Formula(HIGHEST, RULE_SHARE.times(TABLE_CURRENT));
    private static final Formula RULE_ON_LOAD = new Formula(HIGHEST, RULE_SHARE.times(DESIGN));
    private static final Formula OTHER_CHOSEN = new Formula(CHOSEN, OTHER_RATING);
    private static final Formula LOADING_TURNED_OVER = new Formula(LOADING, CHOSEN.over(DESIGN));
    private static final Formula LOADING_OF_CONDUCTOR = new Formula(LOADING, DESIGN.over(AMPACITY));

    private FuseSlips() {}

    static void add(WorkingBuilder working, FuseCase choice, boolean chosen) {
        CapacitySteps.slips(working, choice.capacity());
        if (choice.capacity().isRated()) {
            addHighest(working, choice);
        }
        addLeast(working, choice);
        addRating(working, choice, chosen);
        if (chosen) {
            working.slip(
                    "loading-turned-over", "loading-percent", "Divided the wrong way round", "The share is the load divided by the rating.",
                    LOADING_TURNED_OVER, choice.values());
            working.slip(
                    "loading-of-conductor", "loading-percent", "The share taken of the ampacity",
                    "This share is that of the fuse-link's rating.",
                    LOADING_OF_CONDUCTOR, choice.values());
        }
    }

    private static void addHighest(WorkingBuilder working, FuseCase choice) {
        Values values = choice.values();
        if (choice.allowsMore()) {
            working.slip(
                    "ampacity-for-limit", "highest-rating", "The ampacity used in place of the limit of the rule",
                    "This rule set allows 150 % of it. To stay at the ampacity is prudent, but it is not what the rule says.",
                    RULE_LEFT_OUT,
                    values);
        } else {
            working.slip(
                    "rule-of-another-set", "highest-rating", "150 % taken, the rule of another set",
                    "Here the fuse-link is to stay at what the conductor may carry.", HALF_AS_MUCH_AGAIN, values);
        }
        working.slip(
                "limit-of-the-load", "highest-rating", "The rule applied to the load",
                "The conductor sets the highest rating, not the load.",
                RULE_ON_LOAD, values);
        if (choice.capacity().tableCurrent() != null) {
            working.slip(
                    "limit-without-factors", "highest-rating", "The factors for warmth and bundle left out",
                    "The table holds at its own conditions; where this conductor lies it carries less.", RULE_ON_TABLE, values);
        }
    }

    private static void addLeast(WorkingBuilder working, FuseCase choice) {
        Values values = choice.values();
        if (choice.continuous()) {
            Expression multiplied = DESIGN.times(LOAD_SHARE);
            working.slip(
                    "continuous-multiplied", "least-rating", "Multiplied by the share for continuous loads",
                    "The rating has to be larger than the load, so divide.",
                    new Formula(LEAST, choice.isWarm() ? multiplied.over(WARM_SHARE) : multiplied), values);
            working.slip(
                    "continuous-left-out", "least-rating", "The share for continuous loads left out",
                    "For hours a fuse-link carries only part of its rating.", FuseFormulas.least(false, choice.isWarm()), values);
        }
        if (choice.isWarm()) {
            working.slip(
                    "re-rating-left-out", "least-rating", "The re-rating for the warm place left out",
                    "In a warm place a fuse-link opens at less current.", FuseFormulas.least(choice.continuous(), false), values);
            Expression multiplied = DESIGN.times(WARM_SHARE);
            working.slip(
                    "re-rating-multiplied", "least-rating", "Multiplied by the share left in the warm",
                    "The rating has to be larger to leave enough, so divide.",
                    new Formula(LEAST, choice.continuous() ? multiplied.over(LOAD_SHARE) : multiplied), values);
        }
    }

    private static void addRating(WorkingBuilder working, FuseCase choice, boolean chosen) {
        DeviceKind type = choice.type();
        if (chosen) {
            rating(
                    working, "device-only", type.smallestFrom(choice.values().of(DESIGN)), "Chosen for the bare design current",
                    "A load of hours or a warm place asks for a larger rating; otherwise it opens without a fault.");
            rating(
                    working, "largest-allowed", type.largestUpTo(choice.values().of(HIGHEST)), "The largest the conductor allows",
                    "A limit is not a choice: the smallest that carries the load guards best.");
        } else {
            rating(
                    working, "above-the-conductor", type.smallestFrom(choice.values().of(LEAST)),
                    "Chosen for the device, above what the conductor allows",
                    "An overload would overheat the conductor before this fuse-link opens.");
        }
    }

    private static void rating(WorkingBuilder working, String key, Quantity rating, String name, String words) {
        if (rating != null) {
            working.slip(key, "chosen-rating", name, words, OTHER_CHOSEN, Values.of(OTHER_RATING, rating));
        }
    }
}
