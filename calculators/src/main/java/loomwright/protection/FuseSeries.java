package loomwright.protection;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Candidate;
import loomwright.worked.WorkingBuilder;

/** Chooses the smallest standard rating between the two limits. */
final class FuseSeries {
    private FuseSeries() {}

    /** The row of the rating chosen, or null if none fits. */
    static Row choose(WorkingBuilder working, DeviceKind type, FuseLimits limits) {
        Row chosen = null;
        List<Candidate> candidates = new ArrayList<>();
        for (Row row : type.ratings()) {
            Quantity rating = row.quantity("rating");
            boolean taken = chosen == null && limits.hold(rating);
            chosen = taken ? row : chosen;
            candidates.add(new Candidate(rating.text(), taken, reason(rating, taken, limits)));
        }
        working.choose(
                "Take the smallest standard rating between the two limits", candidates, chosen == null ? null : chosen.quantity("rating"),
                "The smallest that carries the load guards the conductor best.",
                chosen == null ? PublishedTables.bladeFuseRatings().source() : chosen.source());
        return chosen;
    }

    private static String reason(Quantity rating, boolean taken, FuseLimits limits) {
        if (taken) {
            return "the smallest that carries the load";
        }
        if (!FuseLimits.reaches(limits.highest(), rating)) {
            return "above the " + limits.highest().text() + " that the conductor allows";
        }
        return FuseLimits.reaches(rating, limits.least())
                ? "allowed, but larger than the load needs"
                : "below the " + limits.least().text() + " that the load asks for";
    }
}
