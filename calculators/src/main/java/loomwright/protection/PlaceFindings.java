package loomwright.protection;

import loomwright.conductor.TableFive;
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
        TableFive.sayIfStandIn(working, choice.size(), choice.row());
        addSmallest(working, choice);
        addWarmFuse(working, choice);
        addWarmConductor(working, choice);
    }

    private static void addSmallest(WorkingBuilder working, FuseCase choice) {
        Row rule = PublishedTables.smallestConductor().row("33-cfr-separate");
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
