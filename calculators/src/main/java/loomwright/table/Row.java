package loomwright.table;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.source.Standing;

/** One row of a published table. */
public final class Row {
    private final Table table;
    private final List<String> cells;
    private final int line;
    /** Figures already read, and the unit each was assumed to be in: a table never changes, and reading text is dear in the browser. */
    private Quantity[] figures;

    private Unit[] assumed;
    private Source source;

    Row(Table table, List<String> cells, int line) {
        this.table = table;
        this.cells = cells;
        this.line = line;
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
        return quantity(column, table.column(column).unit());
    }

    /**
     * The figure in a cell of a column whose unit differs from row to row.
     *
     * @throws TableFault if the cell holds none
     */
    public Quantity quantity(String column, Unit unit) {
        int at = table.indexOf(column);
        if (figures == null) {
            figures = new Quantity[cells.size()];
            assumed = new Unit[cells.size()];
        }
        if (at >= 0 && figures[at] != null && assumed[at] == unit) {
            return figures[at];
        }
        Quantity figure = read(column, unit);
        if (at >= 0) {
            figures[at] = figure;
            assumed[at] = unit;
        }
        return figure;
    }

    private Quantity read(String column, Unit unit) {
        QuantityText.Reading reading = QuantityText.readPrinted(text(column), unit);
        if (reading.quantity() == null) {
            throw new TableFault(
                    line, "column " + column + " " + reading.fault() + ": \u201c" + text(column) + "\u201d", "Write one number.");
        }
        return reading.quantity();
    }

    /** The first cell with its unit: what a reader would call this row. */
    public String name() {
        Column first = table.columns().get(0);
        return first.unit() == null || cells.get(0).isEmpty() ? cells.get(0) : quantity(first.key()).text();
    }

    /** Where this row comes from, down to the row. */
    public Source source() {
        if (source == null) {
            source = readSource();
        }
        return source;
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
