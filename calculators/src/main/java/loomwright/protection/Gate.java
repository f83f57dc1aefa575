package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.source.Standing;
import loomwright.table.Row;

/**
 * What print says of the opening time at one share of the rating.
 *
 * @param row the printed row
 * @param shortestColumn the column of the time before which the device must not open
 * @param longestColumn the column of the time by which it must have opened
 */
record Gate(Row row, String shortestColumn, String longestColumn) {
    Quantity share() {
        return row.quantity("current-share");
    }

    boolean hasShortest() {
        return row.has(shortestColumn);
    }

    boolean hasLongest() {
        return row.has(longestColumn);
    }

    Quantity shortest() {
        return row.quantity(shortestColumn);
    }

    Quantity longest() {
        return row.quantity(longestColumn);
    }

    /** Whether the gate decides nothing: from memory, or the single time of one device instead of a window. */
    boolean isWeak() {
        return isFromMemory() || shortestColumn.equals(longestColumn);
    }

    /** What it rests on. The time of one device, taken for all of its kind, is an assumption of ours. */
    Source basis() {
        Source source = row.source();
        return isWeak() && !isFromMemory() ? new Source(source.document(), source.locus() + ", one device", Standing.INVENTED) : source;
    }

    boolean isFromMemory() {
        return row.source().standing() == Standing.FROM_MEMORY;
    }
}
