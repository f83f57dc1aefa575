package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** The checks of an ampacity: against the current, and what it takes for granted. */
final class AmpacityFindings {
    private AmpacityFindings() {}

    static void load(WorkingBuilder working, String subject, Quantity current, CarryingCapacity capacity) {
        working.finding(capacity.judge(
                subject, current, "Take a thicker conductor, insulation of a higher rating, or less current."));
    }

    static void conditions(WorkingBuilder working, AmpacityRuleSet rules, Surroundings around, CarryingCapacity capacity) {
        Quantity ampacity = capacity.value();
        working.finding(new Finding(
                Verdict.CAUTION, ampacity.text() + " holds under the conditions of its table. " + rules.conditions(), ampacity, null,
                capacity.source(), "If yours differ, choose the rule set that fits; do not mix figures and factors of two."));
        place(working, rules, around, capacity);
    }

    /** What a figure does not cover, and what stood in. */
    static void place(WorkingBuilder working, AmpacityRuleSet rules, Surroundings around, CarryingCapacity capacity) {
        if (rules == AmpacityRuleSet.FREE_AIR && around.together() > 1) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    capacity.value().text() + " is for a single conductor with air all round. Two or three side by side are not covered.", capacity.value(),
                    null, capacity.source(), "Keep the conductors apart, or choose a rule set that covers them."));
        }
        if (!capacity.words().isEmpty()) {
            stoodIn(working, capacity);
        }
    }

    /** What another row stood in for. */
    private static void stoodIn(WorkingBuilder working, CarryingCapacity capacity) {
        working.finding(
                capacity.isRated()
                        ? new Finding(
                                Verdict.PASSED, "On the cautious side: " + capacity.words(), capacity.value(), null, capacity.source(), "")
                        : Finding.notKnown(
                                "What it may carry is not known, only that it is less than " + capacity.value().text() + ". "
                                        + capacity.words(),
                                capacity.value(), capacity.source(), capacity.missing()));
    }
}
