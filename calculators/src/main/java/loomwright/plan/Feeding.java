package loomwright.plan;

import loomwright.quantity.Quantity;
import loomwright.worked.Entries;

/**
 * The fuse panel that is there already, with its feed.
 *
 * @param limit what it may carry in all
 * @param present what is on it already
 * @param ways how many ways are free
 * @param rating of the device of its feed
 */
record Feeding(Quantity limit, Quantity present, int ways, Quantity rating, Quantity size, Quantity route) {
    /** What has to be known of a panel before anything more is put on it. */
    private static final String[] NEEDED = {"panel-limit", "present-load", "free-ways", "feed-rating", "feed-size", "feed-route"};

    /** The panel; null if it is not wanted, or not enough is known of it. */
    static Feeding of(Entries job) {
        if (!job.choice("feed").equals("panel") || missing(job) != null) {
            return null;
        }
        return new Feeding(
                job.quantity("panel-limit"), job.quantity("present-load"), (int) Math.floor(job.quantity("free-ways").base() + 1e-9),
                job.quantity("feed-rating"), job.quantity("feed-size"), job.quantity("feed-route"));
    }

    /** The first question about the panel that was left open; null if none was. */
    static String missing(Entries job) {
        for (String key : NEEDED) {
            if (!job.has(key)) {
                return key;
            }
        }
        return null;
    }
}
