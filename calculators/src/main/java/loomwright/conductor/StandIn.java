package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.table.Table;

/** The row that may stand for a size that a table does not list: a thinner one, never a thicker. */
final class StandIn {
    /** A metric size is a name that stands for a little less copper in some cables, so a gauge in its place must have 5 % less. */
    private static final double METRIC_MARGIN = 0.95;

    private static final double HAIR = 1e-6;

    private StandIn() {}

    /** The thickest row that has less copper and a figure in that column; null if every row has more copper. */
    static Row row(Table table, String column, Quantity size) {
        Row taken = null;
        for (Row row : table.rows()) {
            boolean thinner = row.has(column) && row.quantity("size").base() <= most(table, size);
            boolean nearer = thinner && (taken == null || row.quantity("size").base() > taken.quantity("size").base());
            taken = nearer ? row : taken;
        }
        return taken;
    }

    /** The thinnest row that has a figure in that column. */
    static Row thinnest(Table table, String column) {
        Row taken = null;
        for (Row row : table.rows()) {
            boolean thinner = row.has(column) && (taken == null || row.quantity("size").base() < taken.quantity("size").base());
            taken = thinner ? row : taken;
        }
        return taken;
    }

    /** The thinnest row that has no less copper; null if there is none. */
    static Row thickEnough(Table table, Quantity size) {
        Row taken = null;
        for (Row row : table.rows()) {
            boolean enough = row.quantity("size").base() >= size.base() * (1 - HAIR);
            taken = enough && (taken == null || row.quantity("size").base() < taken.quantity("size").base()) ? row : taken;
        }
        return taken;
    }

    /** The next row with more copper, whichever way the table runs; null if there is none. */
    static Row thicker(Table table, Row row) {
        Row next = null;
        for (Row each : table.rows()) {
            boolean more = each.quantity("size").base() > row.quantity("size").base();
            next = more && (next == null || each.quantity("size").base() < next.quantity("size").base()) ? each : next;
        }
        return next;
    }

    /** The copper that its row may have at most. */
    private static double most(Table table, Quantity size) {
        boolean gaugeForMetric = table.columns().get(0).unit() == Units.AWG && size.unit() == Units.SQUARE_MILLIMETRE;
        return size.base() * (gaugeForMetric ? METRIC_MARGIN : 1 + HAIR);
    }
}
