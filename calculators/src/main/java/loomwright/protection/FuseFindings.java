package loomwright.protection;

import static loomwright.protection.FuseSymbols.AMPACITY;
import static loomwright.protection.FuseSymbols.CHOSEN;
import static loomwright.protection.FuseSymbols.DESIGN;
import static loomwright.protection.FuseSymbols.HIGHEST;
import static loomwright.protection.FuseSymbols.LEAST;
import static loomwright.protection.FuseSymbols.LOAD_SHARE;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.source.Standing;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** The checks of a fuse-link against its load and its conductor. */
final class FuseFindings {
    private FuseFindings() {}

    /** With a rating chosen. */
    static void addChosen(WorkingBuilder working, FuseCase choice, Row chosenRow, Quantity loading) {
        Quantity chosen = choice.values().of(CHOSEN);
        Quantity highest = choice.values().of(HIGHEST);
        String limit = choice.rules() == RuleSet.US_33_CFR ? choice.rules().share().text() + " of what" : "what";
        working.finding(new Finding(
                Verdict.PASSED, "The rating of " + chosen.text() + " is within " + highest.text() + ", " + limit
                        + " the conductor may carry.",
                chosen, highest, limitSource(choice), ""));
        if (choice.rules() == RuleSet.US_33_CFR) {
            addOverload(working, choice, chosen);
        }
        if (choice.continuous()) {
            Quantity share = choice.values().of(LOAD_SHARE);
            working.finding(new Finding(
                    Verdict.PASSED,
                    "The load takes " + loading.text(3) + " of the rating, within the " + share.text()
                            + " for loads of three hours or more: a rule for mains that 12 V work has borrowed.",
                    loading, share, FuseSteps.continuousRule().source(), ""));
        }
        if (chosenRow.source().standing() == Standing.FROM_MEMORY) {
            working.finding(new Finding(
                    Verdict.CAUTION, "That a " + choice.type().words() + " of " + chosen.text() + " is made is from memory.", chosen, null,
                    chosenRow.source(), "Look whether you can get it before you plan with it."));
        }
    }

    /** A rating above the ampacity leaves a stretch of overload that nothing clears. */
    private static void addOverload(WorkingBuilder working, FuseCase choice, Quantity chosen) {
        Quantity ampacity = choice.values().of(AMPACITY);
        if (FuseLimits.reaches(ampacity, chosen)) {
            working.finding(new Finding(
                    Verdict.PASSED,
                    "The rating of " + chosen.text() + " is also within the " + ampacity.text() + " that the conductor may carry.", chosen,
                    ampacity, choice.row().source(), ""));
        } else {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "The rating of " + chosen.text() + " is above the " + ampacity.text()
                            + " that the conductor may carry: the rule allows it, but a small overload may last.",
                    chosen, ampacity, choice.row().source(), "Where the load could grow, take a thicker conductor."));
        }
    }

    /** With none that fits. */
    static void addNone(WorkingBuilder working, FuseCase choice) {
        Quantity least = choice.values().of(LEAST);
        Quantity highest = choice.values().of(HIGHEST);
        if (!choice.conductorCarriesLoad()) {
            Quantity design = choice.values().of(DESIGN);
            Quantity ampacity = choice.values().of(AMPACITY);
            working.finding(new Finding(
                    Verdict.STOP,
                    "The conductor may carry " + ampacity.text() + ", but the load draws " + design.text()
                            + ": no fuse-link puts that right.",
                    design, ampacity, choice.row().source(), "Take a thicker conductor."));
        } else if (!choice.limits().leaveRoom()) {
            working.finding(new Finding(
                    Verdict.STOP,
                    "The load asks for a rating of at least " + least.text() + ", the conductor allows at most " + highest.text()
                            + ": no fuse-link does both.",
                    least, highest, limitSource(choice), "Take a thicker conductor. Never a larger fuse-link."));
        } else {
            addGap(working, choice, least, highest);
        }
    }

    private static void addGap(WorkingBuilder working, FuseCase choice, Quantity least, Quantity highest) {
        boolean tooSmall = choice.type().smallestFrom(least) == null;
        boolean tooLarge = choice.type().largestUpTo(highest) == null;
        String remedy = "Take a thicker conductor.";
        if (tooSmall || tooLarge) {
            remedy = choice.type() == DeviceKind.BLADE ? "Take a larger kind of fuse-link." : "Take a smaller kind of fuse-link.";
        }
        working.finding(new Finding(
                Verdict.STOP,
                "No standard " + choice.type().words() + " is rated between the " + least.text() + " that the load asks for and the "
                        + highest.text() + " that the conductor allows.",
                least, highest, limitSource(choice), remedy));
    }

    /** Whether or not one was chosen. */
    static void addAlways(WorkingBuilder working, FuseCase choice) {
        Quantity design = choice.values().of(DESIGN);
        Quantity ampacity = choice.values().of(AMPACITY);
        if (choice.conductorCarriesLoad()) {
            working.finding(new Finding(
                    Verdict.PASSED, "The design current of " + design.text() + " is within the " + ampacity.text() + " of the conductor.",
                    design,
                    ampacity, choice.row().source(), ""));
        }
        PlaceFindings.add(working, choice);
        addBreaking(working, choice.type());
    }

    private static void addBreaking(WorkingBuilder working, DeviceKind type) {
        Row breaking = type.breakingRow();
        Row battery = PublishedTables.batteryFaultCurrent().row("lead-acid-100-ah");
        Quantity capacity = breaking.quantity("breaking-capacity");
        Quantity most = battery.quantity("value-to", Units.AMPERE);
        working.finding(new Finding(
                Verdict.CAUTION,
                "A " + type.words() + " can break " + capacity.text() + " at " + breaking.quantity("voltage").text()
                        + " by its data sheet. A 12 V lead-acid battery of 100 Ah may drive "
                        + battery.quantity("value", Units.AMPERE).text()
                        + " to " + most.text() + " into a short circuit.",
                capacity, most, battery.source(),
                "Close to a battery, put a main fuse with a greater breaking capacity before it. Ask the battery's maker for its short-circuit current."));
    }

    /** Where the highest rating comes from: the rule that allows more than the ampacity, or the ampacity itself. */
    private static Source limitSource(FuseCase choice) {
        return choice.rules() == RuleSet.US_33_CFR ? choice.rules().source() : choice.row().source();
    }
}
