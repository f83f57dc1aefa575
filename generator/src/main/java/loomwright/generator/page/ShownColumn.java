package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import loomwright.table.Column;
import loomwright.table.Row;
import loomwright.table.Table;

/**
 * A column as a reader sees it.
 *
 * @param heading what stands above it
 * @param number whether its figures stand below each other
 * @param text what it says of a row
 */
record ShownColumn(String heading, boolean number, Function<Row, String> text) {
    private static final String NAMES = "[a-z0-9.]+(-[a-z0-9.]+)*";
    private static final int MOST_FOR_A_NAME = 3;

    static ShownColumn of(Column column) {
        return new ShownColumn(heading(column), column.unit() != null, row -> row.text(column.key()));
    }

    /**
     * The columns of a page that shows a table by itself. Left out are those that say where a row comes from (that stands below), names that only authors use,
     * and what no row fills. A figure, the end of its range and its unit are one column.
     */
    static List<ShownColumn> whole(Table table, List<Row> rows) {
        List<ShownColumn> shown = new ArrayList<>();
        boolean joined = table.column("value") != null && table.column("unit") != null;
        for (Column column : table.columns()) {
            boolean part = joined && Set.of("value-to", "unit").contains(column.key());
            boolean empty = rows.stream().allMatch(row -> row.text(column.key()).isEmpty());
            if (part || empty || column.isOfTheSource() || isForAuthors(table, column, rows)) {
                continue;
            }
            shown.add(joined && column.key().equals("value") ? new ShownColumn(heading(column), false, ShownColumn::figure) : of(column));
        }
        return shown;
    }

    /** What a row is called below its table: as few of its first columns as tell it from all others. */
    static Function<Row, String> names(List<ShownColumn> columns, List<Row> rows) {
        int count = 1;
        while (count < Math.min(MOST_FOR_A_NAME, columns.size()) && count(columns.subList(0, count), rows) < rows.size()) {
            count++;
        }
        List<ShownColumn> first = columns.subList(0, count);
        return row -> name(first, row);
    }

    private static long count(List<ShownColumn> columns, List<Row> rows) {
        return rows.stream().map(row -> name(columns, row)).distinct().count();
    }

    private static String name(List<ShownColumn> columns, Row row) {
        return columns.stream().map(column -> column.text().apply(row)).filter(text -> !text.isEmpty()).collect(Collectors.joining(", "));
    }

    /** The first column of many tables has a name for each row, to look it up by; the columns after it say the same in words. */
    private static boolean isForAuthors(Table table, Column column, List<Row> rows) {
        boolean first = column.equals(table.columns().get(0));
        return first && column.unit() == null && table.columns().size() > 2
                && rows.stream().allMatch(row -> row.text(column.key()).matches(NAMES))
                && rows.stream().anyMatch(row -> row.text(column.key()).matches(".*[a-z].*-.*|.*-.*[a-z].*"));
    }

    private static String figure(Row row) {
        String to = row.text("value-to");
        return row.text("value") + (to == null || to.isEmpty() ? "" : " to " + to) + (row.text("unit").isEmpty() ? "" : " " + row.text("unit"));
    }

    private static String heading(Column column) {
        String key = column.key().equals("says") ? "what it says" : column.key();
        String words = key.matches("t\\d+") ? key.substring(1) + " °C" : key.replace('-', ' ').replace("awg", "AWG").replace("sae", "SAE");
        String capital = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return column.unit() == null || column.unit().symbol().isEmpty() ? capital : capital + " (" + column.unit().symbol() + ")";
    }
}
