package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/**
 * Between which times a fuse-link opens at a current.
 *
 * <p>The earliest comes from the nearest gate at or above the share of the rating, the latest from the nearest at or below it. Nothing is
 * read between gates. Gates from memory, and the times of a single breaker, are used only where nothing else is in print, and decide
 * nothing.
 *
 * @source tables fuse-gates and marine-breaker-trip, row by row
 */
public final class TimeCurrent implements Calculator {
    @Override
    public Description description() {
        return TimeFields.TIME_CURRENT;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity current = working.convert("Turn the current into amperes", entries.quantity("current"), Units.AMPERE,
                "The rating is in amperes.");
        DeviceKind device = DeviceKind.CHOICES.of(entries.option("fuse-type"));
        TimeBracket bracket = TimeBracket.of(working, device, entries.quantity("rating"), "rating", current, "it");
        bracket.showEarliest(working, "it");
        bracket.showLatest(working, "it");
        if (bracket.earliest() != null) {
            working.result("earliest", bracket.earliestTime());
        }
        if (bracket.latest() != null) {
            working.result("latest", bracket.latestTime());
        }
        working.result("share-percent", bracket.share());
        TimeFindings.bracket(working, bracket);
        if (entries.has("time-limit")) {
            TimeFindings.limit(working, bracket, entries.quantity("time-limit"));
        }
        TimeSlips.add(working, bracket, current);
    }
}
