package loomwright.table;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.source.Document;
import loomwright.source.Source;

/** A published table with its source. */
public final class Table {
    private static final double SAME = 1e-6;

    private final String key;
    private final TableHead head;
    private final List<Column> columns;
    private final List<Row> rows;

    /**
     * A table with all its rows.
     *
     * @param lines the cells of each row
     * @param numbers the line of each row in its file
     */
    Table(String key, TableHead head, List<Column> columns, List<List<String>> lines, List<Integer> numbers) {
        this.key = key;
        this.head = head;
        this.columns = List.copyOf(columns);
        List<Row> made = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            made.add(new Row(this, lines.get(i), numbers.get(i)));
        }
        this.rows = List.copyOf(made);
    }

    public String key() {
        return key;
    }

    public String title() {
        return head.title();
    }

    public Source source() {
        return head.source();
    }

    /** Remarks on the table: conditions, errata. */
    public List<String> notes() {
        return head.notes();
    }

    /** Whether the table may be shown whole; a copyright table is shown by single rows only. */
    public boolean shownWhole() {
        return head.shownWhole();
    }

    public List<Column> columns() {
        return columns;
    }

    public List<Row> rows() {
        return rows;
    }

    /**
     * The row whose figure in {@code column} equals {@code wanted}. There is no interpolation.
     *
     * @return the row, or null if there is none
     */
    public Row find(String column, Quantity wanted) {
        double base = wanted.base();
        for (Row row : rows) {
            double here = row.has(column) ? row.quantity(column).base() : Double.NaN;
            if (Math.abs(here - base) <= SAME * Math.abs(base)) {
                return row;
            }
        }
        return null;
    }

    /**
     * The row of that name, which stands in the first column. A test looks up every name that the calculators use.
     *
     * @throws IllegalArgumentException if there is no such row
     */
    public Row row(String name) {
        Row row = find(columns.get(0).key(), name);
        if (row == null) {
            throw new IllegalArgumentException("the table " + key + " has no row \u201c" + name + "\u201d");
        }
        return row;
    }

    /** The row whose cell in {@code column} reads {@code text}, or null. */
    public Row find(String column, String text) {
        for (Row row : rows) {
            if (row.text(column).equals(text)) {
                return row;
            }
        }
        return null;
    }

    /** The column of that name, or null. */
    public Column column(String columnKey) {
        int at = indexOf(columnKey);
        return at < 0 ? null : columns.get(at);
    }

    /** The document a row may name as its own source, or null. */
    Document document(String documentKey) {
        for (Document document : head.documents()) {
            if (document.key().equals(documentKey)) {
                return document;
            }
        }
        return null;
    }

    int indexOf(String columnKey) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).key().equals(columnKey)) {
                return i;
            }
        }
        return -1;
    }
}
