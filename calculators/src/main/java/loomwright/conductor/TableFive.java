package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/**
 * The one look-up in 33 CFR 183.425 Table 5: the row that may stand for a conductor (its own, or a thinner one, never a thicker one).
 *
 * <p>The table lists AWG. A metric size is a name that stands for a little less copper in some cables, so its row must have at least 5 %
 * less copper than the name. With that margin no row has less resistance than IEC 60228 allows a class 5 cable of the name.
 */
final class TableFive {
    private TableFive() {}

    /** The row for a size, or null if every row has more copper. */
    static Row row(Quantity size) {
        Row own = size.unit() == Units.AWG ? PublishedTables.no33Cfr183425Table5().find("size", size) : null;
        return own == null ? StandIn.row(PublishedTables.no33Cfr183425Table5(), Insulation.T60.column(), size) : own;
    }
}
