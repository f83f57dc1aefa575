package loomwright.protection;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.worked.WorkingBuilder;

/**
 * Between which times a device opens at one current.
 *
 * @param device its kind
 * @param rating its rating
 * @param gates all its gates
 * @param share the current as a share of the rating
 * @param earliest the gate for the time before which it does not open, or null
 * @param latest the gate for the time by which it has opened, or null
 */
record TimeBracket(DeviceKind device, Quantity rating, Gates gates, Quantity share, Gate earliest, Gate latest) {
    private static final String EXACT = "The gate is printed for this current.";


    /** Finds the bracket, with the step to the share. {@code which} names the device where there are two. */
    static TimeBracket of(WorkingBuilder working, DeviceKind device, Quantity rating, String ratingField, Quantity current, String which) {
        Gates gates = Gates.of(device, rating, ratingField);
        Quantity share = working.compute(
                "See what share of the rating flows through " + which, TimeSymbols.SHARE_OF_RATING,
                Values.of(TimeSymbols.CURRENT, current).with(TimeSymbols.RATING, rating), Units.PERCENT,
                "The gates are printed by percent of the rating.");
        return new TimeBracket(device, rating, gates, share, gates.earliest(share), gates.latest(share));
    }

    /** Adds the step that reads the earliest time, if there is one. */
    void showEarliest(WorkingBuilder working, String which) {
        if (earliest != null) {
            working.lookUp(
                    "Read the time before which " + which + " does not open, from the gate at " + earliest.share().text(),
                    TimeSymbols.EARLIEST,
                    earliest.row(), earliest.shortestColumn(),
                    earliestIsExact() ? EXACT : "With less current it takes no less time than at this gate.");
        }
    }

    /** Adds the step that reads the latest time, if there is one. */
    void showLatest(WorkingBuilder working, String which) {
        if (latest != null) {
            working.lookUp(
                    "Read the time by which " + which + " has opened, from the gate at " + latest.share().text(), TimeSymbols.LATEST,
                    latest.row(), latest.longestColumn(),
                    latestIsExact() ? EXACT : "With more current it takes no more time than at this gate.");
        }
    }

    /** Where the bracket comes from: its latest time before its earliest, and its table if it has neither. */
    Source source() {
        if (latest != null) {
            return latest.row().source();
        }
        return earliest != null ? earliest.row().source() : gates.source();
    }

    /** The device in the middle of a sentence, such as {@code blade fuse-link of 10 A}. */
    String name() {
        return device.words() + " of " + rating.text();
    }

    Quantity earliestTime() {
        return earliest == null ? null : earliest.shortest();
    }

    Quantity latestTime() {
        return latest == null ? null : latest.longest();
    }

    boolean earliestIsExact() {
        return earliest != null && isHere(earliest);
    }

    boolean latestIsExact() {
        return latest != null && isHere(latest);
    }

    private boolean isHere(Gate gate) {
        return Math.abs(gate.share().base() - share.base()) <= 1e-9 * share.base();
    }
}
