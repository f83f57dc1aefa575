package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.table.Table;
import loomwright.worked.Refusal;

/** Finds the row of a size, or says which rows there are. There is no reading between rows. */
final class SizeRow {
    private SizeRow() {}

    /**
     * The row for a size.
     *
     * @throws Refusal if the table has no such row; names the sizes on either side
     */
    static Row of(Table table, Quantity size, String sizesIn) {
        return of(table, size, sizesIn, "another kind of conductor");
    }

    /** The same, with another way out to offer. */
    static Row of(Table table, Quantity size, String sizesIn, String otherwise) {
        boolean gaugeTable = table.columns().get(0).unit() == Units.AWG;
        boolean gaugeSize = size.unit() == Units.AWG;
        Row row = gaugeTable == gaugeSize ? table.find("size", size) : null;
        if (row != null) {
            return row;
        }
        throw new Refusal("size", message(table, size, sizesIn) + ", or " + otherwise);
    }

    private static String message(Table table, Quantity size, String sizesIn) {
        StringBuilder text = new StringBuilder("Size " + size.text());
        if (size.unit() != Units.SQUARE_MILLIMETRE) {
            text.append(" (").append(size.in(Units.SQUARE_MILLIMETRE).text(3)).append(")");
        }
        text.append(" is not in this table, which lists ").append(sizesIn).append(". Choose");
        Row below = nearest(table, size.base(), true);
        Row above = nearest(table, size.base(), false);
        if (below != null) {
            text.append(" ").append(below.name()).append(above == null ? "" : " (thinner) or");
        }
        if (above != null) {
            text.append(" ").append(above.name()).append(" (thicker)");
        }
        return text.toString();
    }

    private static Row nearest(Table table, double area, boolean below) {
        Row nearest = null;
        for (Row row : table.rows()) {
            double here = row.quantity("size").base();
            boolean onThisSide = below ? here < area : here > area;
            boolean nearer = nearest == null || (here < nearest.quantity("size").base()) != below;
            if (onThisSide && nearer) {
                nearest = row;
            }
        }
        return nearest;
    }
}
