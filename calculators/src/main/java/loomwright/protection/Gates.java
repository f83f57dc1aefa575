package loomwright.protection;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Refusal;

/** Every gate of one device, and what they say between them: more current never opens a device later. */
final class Gates {
    private static final double HAIR = 1e-9;
    private final List<Gate> gates = new ArrayList<>();

    private Gates() {}

    /**
     * The gates of a device.
     *
     * @param ratingField the field the rating was entered in
     * @throws Refusal if none is listed for that rating
     */
    static Gates of(DeviceKind device, Quantity rating, String ratingField) {
        Gates found = new Gates();
        if (device == DeviceKind.BREAKER) {
            for (Row row : PublishedTables.marineBreakerTrip().rows()) {
                if (row.has("current-share") && row.has("time")) {
                    found.gates.add(new Gate(row, "time", "time"));
                }
            }
            return found;
        }
        for (Row row : PublishedTables.fuseGates().rows()) {
            if (row.text("fuse").equals(device.key()) && isFor(row, rating)) {
                found.gates.add(new Gate(row, "shortest", "longest"));
            }
        }
        if (found.gates.isEmpty()) {
            throw new Refusal(ratingField, "Rating " + rating.text() + " has no opening times listed for a " + device.words()
                    + ": enter " + listed(device) + ", or choose another kind");
        }
        return found;
    }

    private static boolean isFor(Row row, Quantity rating) {
        boolean above = !row.has("rating-from") || rating.base() >= row.quantity("rating-from").base() * (1 - HAIR);
        boolean below = !row.has("rating-to") || rating.base() <= row.quantity("rating-to").base() * (1 + HAIR);
        return above && below;
    }

    private static String listed(DeviceKind device) {
        Quantity least = null;
        Quantity greatest = null;
        for (Row row : PublishedTables.fuseGates().rows()) {
            if (row.text("fuse").equals(device.key()) && row.has("rating-from")) {
                least = least == null || row.quantity("rating-from").base() < least.base() ? row.quantity("rating-from") : least;
                greatest = greatest == null || row.quantity("rating-to").base() > greatest.base() ? row.quantity("rating-to") : greatest;
            }
        }
        return least.text() + " to " + greatest.text();
    }

    /** The gate that says how soon the device may open at most: the nearest at or above the share. Weak gates come last. */
    Gate earliest(Quantity share) {
        Gate strong = nearest(share, true, false);
        return strong == null ? nearest(share, true, true) : strong;
    }

    /** The gate that says how late the device may open at most: the nearest at or below the share. Weak gates come last. */
    Gate latest(Quantity share) {
        Gate strong = nearest(share, false, false);
        return strong == null ? nearest(share, false, true) : strong;
    }

    /** The gate that says soonest that it has opened, weak or not: it may stop a design and never pass one. Null if there is none. */
    Gate soonest(Quantity share) {
        Gate strong = nearest(share, false, false);
        Gate weak = nearest(share, false, true);
        return strong == null || weak != null && weak.longest().base() < strong.longest().base() ? weak : strong;
    }

    /** The nearest gate on the other side, which a hasty reader takes instead; null if there is none. */
    Gate wrongForLatest(Quantity share) {
        Gate above = null;
        for (Gate gate : gates) {
            boolean further = gate.share().base() > share.base() * (1 + HAIR) && gate.hasLongest();
            above = further && (above == null || gate.share().base() < above.share().base()) ? gate : above;
        }
        return above;
    }

    /** The nearest gate on the other side, which a hasty reader takes instead; null if there is none. */
    Gate wrongForEarliest(Quantity share) {
        Gate below = null;
        for (Gate gate : gates) {
            boolean before = gate.share().base() < share.base() * (1 - HAIR) && gate.hasShortest();
            below = before && (below == null || gate.share().base() > below.share().base()) ? gate : below;
        }
        return below;
    }

    /** Where the first of them comes from. */
    Source source() {
        return gates.get(0).row().source();
    }

    /** The gates from memory. */
    List<Gate> fromMemory() {
        List<Gate> weak = new ArrayList<>();
        for (Gate gate : gates) {
            if (gate.isFromMemory()) {
                weak.add(gate);
            }
        }
        return weak;
    }

    private Gate nearest(Quantity share, boolean upward, boolean weak) {
        Gate nearest = null;
        for (Gate gate : gates) {
            double here = gate.share().base();
            boolean side = upward ? here >= share.base() * (1 - HAIR) : here <= share.base() * (1 + HAIR);
            boolean says = upward ? gate.hasShortest() : gate.hasLongest();
            if (side && says && gate.isWeak() == weak) {
                boolean nearer = nearest == null || (here < nearest.share().base()) == upward;
                nearest = nearer ? gate : nearest;
            }
        }
        return nearest;
    }
}
