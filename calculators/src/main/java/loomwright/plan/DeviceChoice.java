package loomwright.plan;

import java.util.List;
import loomwright.protection.DeviceKind;
import loomwright.protection.Holding;
import loomwright.quantity.Quantity;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/**
 * The device of a run or feed: kind and rating.
 *
 * <p>Least rating = design current ÷ (share for hours × share left in the warm). Of the kinds it takes the plainer, the blade fuse-link, where that
 * breaks the current of a short circuit, else class T.
 */
final class DeviceChoice {
    /** Round a device in a closed box; the next hotter row of the re-rating sheet counts. */
    static final String WARM = "40 °C";

    /** A load may come this near to a rating without being near it. */
    private static final double ROOM = 0.95;

    private final double amperes;
    private final double share;
    private double least;
    private boolean cool;
    /** Whether its holder takes blade fuse-links and nothing else. */
    private final boolean bladeOnly;
    private DeviceKind kind = DeviceKind.BLADE;
    private List<Quantity> sold = Sold.ratings(kind);
    private double atLeast;
    private Quantity rating;

    DeviceChoice(double amperes, boolean lasting, boolean bladeOnly) {
        this.bladeOnly = bladeOnly;
        this.amperes = amperes;
        this.share = lasting ? Holding.share(kind).base() : ROOM;
        this.least = amperes / Math.min(ROOM, lasting ? share * warmShare() : warmShare());
        this.atLeast = least;
        settle();
    }

    private DeviceChoice(Quantity rating) {
        this.bladeOnly = false;
        this.amperes = rating.base();
        this.share = 1;
        this.least = amperes;
        this.atLeast = least;
        settle();
    }

    /** A device of a rating that is settled by habit, such as the 2 A of a trigger. */
    static DeviceChoice of(Quantity rating) {
        return new DeviceChoice(rating);
    }

    /** What a fuse-link carries in the warm, as a share of its rating; the same share is taken for all. */
    static double warmShare() {
        Quantity warm = Plain.quantity(WARM);
        for (Row row : PublishedTables.fuseRerating().rows()) {
            if (row.quantity("ambient").base() >= warm.base()) {
                return row.quantity("current").base() / row.quantity("rating").base();
            }
        }
        throw new IllegalStateException("no re-rating row for " + warm.text());
    }

    /** The least rating that the load asks for, in amperes. */
    double leastAmperes() {
        return least;
    }

    DeviceKind kind() {
        return kind;
    }

    /** The rating; null if none that is sold is large enough. */
    Quantity rating() {
        return rating;
    }

    /** Whether it has to sit where it is no warmer than 20 °C, since the sheet of its load allows no more. */
    boolean isCool() {
        return cool;
    }

    /** Takes no account of the warm, so that a smaller rating will do. */
    void keepCool() {
        cool = true;
        least = amperes / share;
        atLeast = least;
        settle();
    }

    /** Takes the kind that breaks more. */
    void breakMore() {
        kind = DeviceKind.CLASS_T;
        sold = Sold.ratings(kind);
        settle();
    }

    /** Takes the least rating above another; false if none is sold. */
    boolean goAbove(Quantity other) {
        atLeast = Math.max(atLeast, other.base() * (1 + 1e-6));
        settle();
        return rating != null;
    }

    private void settle() {
        rating = Sold.least(sold, atLeast);
        if (rating == null && kind == DeviceKind.BLADE && !bladeOnly) {
            breakMore();
        }
    }
}
