package loomwright.table;

import java.util.ArrayList;
import java.util.List;
import loomwright.source.Document;
import loomwright.source.Standing;

/** Reads {@code content/sources.csv}: key, issuer, document, edition, standing, seen, note. */
public final class DocumentReader {
    private static final String COLUMNS = "key,issuer,document,edition,standing,seen,note";

    private DocumentReader() {}

    /**
     * Reads the whole file.
     *
     * @throws TableFault at the first mistake
     */
    public static List<Document> read(String text) {
        List<Document> documents = new ArrayList<>();
        List<String> lines = Csv.lines(text);
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (!line.isBlank() && !line.startsWith("#") && !line.equals(COLUMNS)) {
                documents.add(document(line, i + 1));
            }
        }
        return documents;
    }

    private static Document document(String line, int number) {
        List<String> cells = Csv.cells(line, number, new AuthorsWording());
        if (cells.size() != 7) {
            throw new TableFault(number, "a document needs 7 cells but has " + cells.size(), "Write " + COLUMNS + ".");
        }
        Standing standing = Standing.named(cells.get(4));
        if (standing == null) {
            throw new AuthorsWording().fault(number, "standing", cells.get(4));
        }
        return new Document(cells.get(0), cells.get(1), cells.get(2), cells.get(3), standing, cells.get(5), cells.get(6));
    }
}
