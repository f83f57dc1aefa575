package loomwright.plan;

import java.util.ArrayList;
import java.util.List;
import loomwright.protection.DeviceKind;
import loomwright.quantity.Quantity;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** Ratings that are sold, smallest first. Those that are only remembered are left out: such a figure passes nothing. */
final class Sold {
    private Sold() {}

    static List<Quantity> ratings(DeviceKind kind) {
        if (kind.ratings().isEmpty()) {
            return ratings(kind.key());
        }
        List<Quantity> ratings = new ArrayList<>();
        for (Row row : kind.ratings()) {
            if (row.source().standing().mayPass()) {
                ratings.add(row.quantity("rating"));
            }
        }
        return ratings;
    }

    /** Those of the table sold-ratings: {@code isolator}, {@code fuse-box}, {@code switch}, {@code class-t}. */
    static List<Quantity> ratings(String what) {
        List<Quantity> ratings = new ArrayList<>();
        for (Row row : PublishedTables.soldRatings().rows()) {
            if (row.text("what").equals(what)) {
                ratings.add(row.quantity("rating"));
            }
        }
        return ratings;
    }

    /** The smallest of at least so many amperes; null if none is that large. */
    static Quantity least(List<Quantity> ratings, double amperes) {
        for (Quantity rating : ratings) {
            if (rating.base() >= amperes * (1 - 1e-9)) {
                return rating;
            }
        }
        return null;
    }
}
