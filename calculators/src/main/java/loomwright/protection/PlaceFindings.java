package loomwright.protection;

import loomwright.conductor.Surroundings;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** What the place and the conductor ask for beside the rating. */
final class PlaceFindings {
    private PlaceFindings() {}

    static void add(WorkingBuilder working, Entries entries, FuseCase choice) {
        if (choice.rules() == RuleSet.US_33_CFR) {
            ifPassed(working, smallest(choice));
        }
        if (choice.warmRow() != null) {
            addWarmFuse(working, choice);
        }
        if (choice.capacity().isByTable()) {
            ifPassed(working, warmConductor(choice, Surroundings.of(entries).warmth()));
        }
    }

    /** A check that says nothing while it holds. */
    private static void ifPassed(WorkingBuilder working, Comparison comparison) {
        if (!comparison.holds()) {
            working.finding(comparison.finding());
        }
    }

    private static Comparison smallest(FuseCase choice) {
        Row rule = PublishedTables.smallestConductor().row("33-cfr-separate");
        Quantity smallest = rule.quantity("size-awg");
        return Comparison.of("The size of the conductor", choice.capacity().size().in(Units.SQUARE_MILLIMETRE))
                .atLeast(
                        smallest.in(Units.SQUARE_MILLIMETRE),
                        "the " + smallest.text() + " that this rule set asks for where a conductor is installed by itself", rule.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Take " + smallest.text() + ", or a cable with a sheath.");
    }

    /** The re-rating sheet is that of one part only. */
    private static void addWarmFuse(WorkingBuilder working, FuseCase choice) {
        Row row = choice.warmRow();
        working.finding(Finding.notKnown(
                "The re-rating is printed for a large blade fuse-link of " + row.quantity("rating").text()
                        + " only. It is taken here for other ratings and kinds, and " + row.name() + " for " + choice.ambient().text() + ".",
                choice.ambient().in(Units.CELSIUS), row.source(),
                new MissingFigure(
                        FuseFields.WARM_SHARE.key(), "share of its rating left in the warm of a " + choice.type().words(),
                        "its data sheet, as re-rating or derating by temperature")));
    }

    /** The conductor begins at the fuse-link, so its end lies as warm. */
    private static Comparison warmConductor(FuseCase choice, Quantity around) {
        return Comparison.of("The temperature around the fuse-link", choice.ambient().in(Units.CELSIUS))
                .atMost(around, "the temperature around the conductor that its ampacity was worked out for", choice.capacity().source())
                .exact()
                .otherwise(Verdict.CAUTION, "The conductor begins in that warmth: enter it as the temperature around the conductor as well.");
    }
}
