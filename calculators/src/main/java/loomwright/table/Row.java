package loomwright.table;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.source.Standing;

/**
 * One row of a published table. It never changes: reading text is dear in the browser, so a figure and the source are kept once they are
 * asked for, each in one write of a value that cannot change. Threads that ask at the same time read the same text twice, no more.
 */
public final class Row {
    private final Table table;
    private final List<String> cells;
    private final int line;
    private final Quantity[] figures;
    private Source source;

    Row(Table table, List<String> cells, int line) {
        this.table = table;
        this.cells = List.copyOf(cells);
        this.line = line;
        this.figures = new Quantity[cells.size()];
    }

    public Table table() {
        return table;
    }

    /** The line of the table file that holds this row, counted from 1. */
    public int line() {
        return line;
    }

    /** The cell as it is written; an empty text if it is empty or there is no such column. */
    public String text(String column) {
        int at = table.indexOf(column);
        return at < 0 ? "" : cells.get(at);
    }

    /** Whether the cell holds anything. */
    public boolean has(String column) {
        return !text(column).isEmpty();
    }

    /**
     * The figure in a cell.
     *
     * @throws TableFault if the cell holds none
     */
    public Quantity quantity(String column) {
        int at = table.indexOf(column);
        if (at < 0) {
            throw new IllegalArgumentException("the table " + table.key() + " has no column \u201c" + column + "\u201d");
        }
        return quantity(column, table.columns().get(at).unit());
    }

    /**
     * The figure in a cell of a column whose unit differs from row to row.
     *
     * @throws TableFault if the cell holds none
     */
    public Quantity quantity(String column, Unit unit) {
        int at = table.indexOf(column);
        Quantity kept = at < 0 ? null : figures[at];
        if (kept == null || kept.unit() != unit) {
            QuantityText.Reading reading = QuantityText.readPrinted(text(column), unit);
            if (reading.quantity() == null) {
                throw new TableFault(
                        line, "column " + column + " " + reading.fault() + ": \u201c" + text(column) + "\u201d", "Write one number.");
            }
            kept = reading.quantity();
            figures[at] = kept;
        }
        return kept;
    }

    /** The first cell with its unit: what a reader would call this row. */
    public String name() {
        Column first = table.columns().get(0);
        return first.unit() == null || cells.get(0).isEmpty() ? cells.get(0) : quantity(first.key()).text();
    }

    /** Where this row comes from, down to the row. */
    public Source source() {
        Source kept = source;
        if (kept == null) {
            kept = readSource();
            source = kept;
        }
        return kept;
    }

    private Source readSource() {
        Source whole = table.source();
        Document own = table.document(text("source"));
        Standing stated = Standing.named(text("standing"));
        Standing standing = own == null ? whole.standing() : own.standing();
        String locus = has("locus") || own != null ? text("locus") : whole.locus();
        return new Source(own == null ? whole.document() : own, place(locus), stated == null ? standing : stated);
    }

    /** A row of figures is called by its first figure; a row that opens with a mere key is not. */
    private String place(String locus) {
        if (table.columns().get(0).unit() == null) {
            return locus;
        }
        return locus.isEmpty() ? name() : locus + ", " + name();
    }
}
