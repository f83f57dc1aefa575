package loomwright.table;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.source.Standing;

/** Reads a table file: comment lines with the title and the source, a line of column names, then the rows. */
public final class TableReader {
    private final List<Document> documents;
    private final TableWording wording;
    private final List<String> notes = new ArrayList<>();
    private String title;
    private Document document;
    private String locus = "";
    private Standing standing;
    private boolean shownWhole;

    private TableReader(List<Document> documents, TableWording wording) {
        this.documents = documents;
        this.wording = wording;
    }

    /**
     * Reads a table.
     *
     * @param key the name of the table
     * @param text the file
     * @param documents the documents it may name as its source
     * @throws TableFault at the first mistake
     */
    public static Table read(String key, String text, List<Document> documents) {
        return new TableReader(documents, new AuthorsWording()).table(key, Csv.lines(text));
    }

    /** Reads a table that was read before, when the program was built: no mistake of its author is left in it. */
    static Table readAgain(String key, String text, List<Document> documents) {
        return new TableReader(documents, (line, mistake, found) -> new TableFault(line, mistake, found)).table(key, Csv.lines(text));
    }

    private Table table(String key, List<String> lines) {
        TableHead head = null;
        List<Column> columns = List.of();
        List<List<String>> rows = new ArrayList<>();
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.startsWith("#")) {
                remark(line.substring(1).strip(), i + 1);
            } else if (head == null && !line.isBlank()) {
                head = head(i + 1);
                columns = columns(Csv.cells(line, i + 1, wording), i + 1);
            } else if (!line.isBlank()) {
                rows.add(row(columns, Csv.cells(line, i + 1, wording), i + 1));
                numbers.add(i + 1);
            }
        }
        if (head == null) {
            throw wording.fault(lines.size(), "columns", "");
        }
        return new Table(key, head, columns, rows, numbers);
    }

    private void remark(String remark, int line) {
        int colon = remark.indexOf(':');
        String name = colon < 0 ? remark : remark.substring(0, colon);
        String value = colon < 0 ? "" : remark.substring(colon + 1).strip();
        switch (name) {
            case "title" -> title = value;
            case "source" -> document = document(value, line);
            case "locus" -> locus = value;
            case "standing" -> standing = standing(value, line);
            case "shown" -> shownWhole = isWhole(value, line);
            case "note" -> notes.add(value);
            default -> throw wording.fault(line, "remark", name);
        }
    }

    private boolean isWhole(String shown, int line) {
        if (!shown.equals("whole") && !shown.equals("rows")) {
            throw wording.fault(line, "shown", shown);
        }
        return shown.equals("whole");
    }

    private Document document(String documentKey, int line) {
        for (Document each : documents) {
            if (each.key().equals(documentKey)) {
                return each;
            }
        }
        throw wording.fault(line, "document", documentKey);
    }

    private Standing standing(String name, int line) {
        Standing standing = Standing.named(name);
        if (standing == null) {
            throw wording.fault(line, "standing", name);
        }
        return standing;
    }

    private TableHead head(int line) {
        if (title == null || document == null) {
            throw wording.fault(line, "head", title == null ? "title" : "source");
        }
        Source source = new Source(document, locus, standing == null ? document.standing() : standing);
        return new TableHead(title, source, shownWhole, List.copyOf(notes), documents);
    }

    private List<Column> columns(List<String> names, int line) {
        List<Column> columns = new ArrayList<>();
        for (String name : names) {
            int open = name.indexOf(" (");
            if (open < 0) {
                columns.add(new Column(name, null));
            } else {
                columns.add(new Column(name.substring(0, open), unit(name, name.substring(open + 2, name.length() - 1), line)));
            }
        }
        return columns;
    }

    private Unit unit(String name, String symbol, int line) {
        QuantityText.Reading reading = QuantityText.read("1 " + symbol, null);
        if (reading.quantity() == null) {
            throw wording.fault(line, "unit", name);
        }
        return reading.quantity().unit();
    }

    private List<String> row(List<Column> columns, List<String> cells, int line) {
        if (cells.size() != columns.size()) {
            throw wording.fault(line, "row", cells.size() + " cells but there are " + columns.size() + " columns");
        }
        for (int i = 0; i < cells.size(); i++) {
            if (columns.get(i).key().equals("source") && !cells.get(i).isEmpty()) {
                document(cells.get(i), line);
            } else if (columns.get(i).key().equals("standing") && !cells.get(i).isEmpty()) {
                standing(cells.get(i), line);
            }
        }
        return cells;
    }
}
