package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** What the place and the conductor ask for beside the rating. */
final class PlaceFindings {
    private static final Quantity OUTSIDE = Quantity.of(30, Units.CELSIUS);
    private static final Quantity ENGINE_SPACE = Quantity.of(50, Units.CELSIUS);

    private PlaceFindings() {}

    static void add(WorkingBuilder working, FuseCase choice) {
        addStandIn(working, choice);
        addSmallest(working, choice);
        addWarmFuse(working, choice);
        addWarmConductor(working, choice);
    }

    /** A row that stands in for the size entered. */
    private static void addStandIn(WorkingBuilder working, FuseCase choice) {
        Quantity row = TableFive.squareMillimetres(choice.row());
        if (choice.size().base() > row.base() * (1 + 1e-6)) {
            Quantity less = Quantity.ofBase(1 - row.base() / choice.size().base(), Units.PERCENT);
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "Table 5 has no row for " + choice.size().text() + ". That of " + choice.row().name() + " stands in, with "
                            + less.text(3)
                            + " less copper.",
                    choice.size().in(Units.SQUARE_MILLIMETRE), row, choice.row().source(),
                    "If the maker of the cable gives a lower current than this, that figure rules."));
        }
    }

    private static void addSmallest(WorkingBuilder working, FuseCase choice) {
        Row rule = PublishedTables.smallestConductor().find("rule", "33-cfr-separate");
        Quantity smallest = rule.quantity("size-awg");
        if (choice.rules() == RuleSet.US_33_CFR && choice.size().base() < smallest.base() * (1 - 1e-6)) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "This rule set asks for " + smallest.text() + " at least when a conductor is installed by itself; " + choice.size()
                            .text()
                            + " is allowed inside a sheath only.",
                    choice.size().in(Units.SQUARE_MILLIMETRE), smallest.in(Units.SQUARE_MILLIMETRE), rule.source(),
                    "Take " + smallest.text() + ", or a cable with a sheath."));
        }
    }

    /** The re-rating sheet is that of one part only. */
    private static void addWarmFuse(WorkingBuilder working, FuseCase choice) {
        if (choice.isWarm()) {
            Row row = choice.warmRow();
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "The re-rating is printed for a large blade fuse-link of " + row.quantity("rating").text()
                            + " only. It is taken here for other ratings and kinds, and " + row.name() + " for " + choice.ambient().text()
                            + ".",
                    choice.ambient().in(Units.CELSIUS), row.quantity("ambient"), row.source(),
                    "Look for the re-rating in the data sheet of your own fuse-link."));
        }
    }

    /** The ampacity holds for one temperature round the conductor. */
    private static void addWarmConductor(WorkingBuilder working, FuseCase choice) {
        Quantity base = choice.engineSpace() ? ENGINE_SPACE : OUTSIDE;
        if (choice.ambient().base() > base.base()) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "The ampacity holds for " + base.text() + " round the conductor. You entered " + choice.ambient().text()
                            + " for the fuse-link.",
                    choice.ambient().in(Units.CELSIUS), base, Source.of(choice.row().source().document(), "183.425 Table 5 and note 1"),
                    "If the conductor lies as warm as that, it may carry less: work out its ampacity first."));
        }
    }
}
