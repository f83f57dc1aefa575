package loomwright.protection;

import static loomwright.protection.FuseSymbols.CHOSEN;
import static loomwright.protection.FuseSymbols.DESIGN;
import static loomwright.protection.FuseSymbols.HIGHEST;
import static loomwright.protection.FuseSymbols.LEAST;
import static loomwright.protection.FuseSymbols.LOAD_SHARE;

import loomwright.conductor.CapacitySteps;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Sentence;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** The checks of a fuse-link against its load and its conductor. */
final class FuseFindings {
    private static final String THICKER = "Take a thicker conductor, or insulation of a higher rating.";

    private FuseFindings() {}

    /** With a rating chosen. */
    static void addChosen(WorkingBuilder working, FuseCase choice, Row chosenRow, Quantity loading) {
        Quantity chosen = choice.values().of(CHOSEN);
        working.finding(DeviceRule.of("The fuse-link chosen", chosen).guardsConductor("the conductor", choice.capacity(), choice.rules(), Sentence.of(THICKER)));
        if (choice.allowsMore()) {
            working.finding(supposing(choice, Comparison.of("The rating chosen", chosen)
                    .atMost(choice.capacity().value(), "the bare ampacity of the conductor", choice.capacity().source())
                    .exact()
                    .otherwise(
                            Verdict.CAUTION,
                            "The rule allows it, but a small overload may last. Where the load could grow, take a thicker conductor."))
                    .finding());
        }
        if (choice.continuous()) {
            working.finding(Comparison.of("The load's share of the rating", loading)
                    .atMost(
                            choice.values().of(LOAD_SHARE), "the share for loads of three hours or more, a rule for mains that 12 V work has borrowed",
                            FuseSteps.continuousRule().source())
                    .exact()
                    .finding());
        }
        if (!chosenRow.source().standing().mayPass()) {
            String name = choice.type().words() + " of " + chosen.text();
            working.finding(Finding.notKnown(
                    "That a " + name + " is made is " + chosenRow.source().standing().words() + ".", chosen, chosenRow.source(),
                    new MissingFigure("", "rating " + chosen.text() + " among those sold", "the list of a maker of a " + choice.type().words())));
        }
    }

    /** With none that fits. */
    static void addNone(WorkingBuilder working, FuseCase choice) {
        if (!choice.conductorCarriesLoad()) {
            return;
        }
        Quantity least = choice.values().of(LEAST);
        Quantity highest = choice.values().of(HIGHEST);
        Comparison room = supposing(choice, Comparison.of("The least rating that the load asks for", least)
                .atMost(highest, "the highest that the conductor allows", limitSource(choice))
                .exact()
                .otherwise(Verdict.STOP, "Take a thicker conductor. Never a larger fuse-link."));
        working.finding(room.holds() ? gap(choice, least, highest) : room.finding());
    }

    private static Finding gap(FuseCase choice, Quantity least, Quantity highest) {
        boolean tooSmall = choice.type().smallestFrom(least) == null;
        boolean tooLarge = choice.type().largestUpTo(highest) == null;
        String remedy = "Take a thicker conductor.";
        if (tooSmall || tooLarge) {
            remedy = choice.type() == DeviceKind.BLADE ? "Take a larger kind of fuse-link." : "Take a smaller kind of fuse-link.";
        }
        return new Finding(
                Verdict.STOP,
                "No standard " + choice.type().words() + " is rated between the " + least.text() + " that the load asks for and the "
                        + highest.text() + " that the conductor allows.",
                least, null, limitSource(choice), remedy);
    }

    /** Whether or not one was chosen. */
    static void addAlways(WorkingBuilder working, Entries entries, FuseCase choice) {
        working.finding(choice.capacity().judge("The design current", choice.values().of(DESIGN), "Take a thicker conductor. No fuse-link puts that right."));
        CapacitySteps.findings(entries, working, choice.capacity());
        PlaceFindings.add(working, entries, choice);
        addBreaking(working, entries, choice.type());
    }

    /** What it can break decides near the battery; how much may flow there, nobody knows but the reader. */
    private static void addBreaking(WorkingBuilder working, Entries entries, DeviceKind type) {
        Row breaking = type.breakingRow();
        Quantity capacity = breaking.quantity("breaking-capacity");
        Quantity prospective = entries.quantity(FuseFields.PROSPECTIVE.key());
        if (prospective == null) {
            working.finding(Finding.notKnown(
                    "A " + type.words() + " can break " + capacity.text() + " at " + breaking.quantity("voltage").text()
                            + " by its data sheet. Near a battery more than that may flow.",
                    capacity, breaking.source(),
                    new MissingFigure(
                            FuseFields.PROSPECTIVE.key(), "highest prospective current at the fuse-link", "the calculator of prospective fault current")));
            return;
        }
        working.finding(Comparison.of("The highest prospective current", prospective.in(Units.AMPERE))
                .atMost(capacity, "what a " + type.words() + " can break", breaking.source())
                .otherwise(Verdict.STOP, "Take a kind of greater breaking capacity.")
                .finding());
    }

    private static Comparison supposing(FuseCase choice, Comparison comparison) {
        return choice.capacity().assumed().isEmpty() ? comparison : comparison.assuming(choice.capacity().assumed());
    }

    /** Where the highest rating comes from: the rule that allows more than the ampacity, or the ampacity itself. */
    private static Source limitSource(FuseCase choice) {
        return choice.allowsMore() ? choice.rules().source() : choice.capacity().source();
    }
}
