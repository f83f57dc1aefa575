package loomwright.worked;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One figure of a list typed from a publication ({@code src/test/resources/published}).
 *
 * @param document the publication, from the head of the list
 * @param size the size of conductor
 * @param column the column of our table that holds the figure
 * @param unit the unit it is printed in
 * @param printed the figure
 * @param half half of its last printed digit
 */
public record PrintedRow(String document, String size, String column, String unit, double printed, double half) {
    /** Every figure of a list. */
    public static List<PrintedRow> read(String list) {
        List<PrintedRow> rows = new ArrayList<>();
        String document = "";
        for (String line : lines(list)) {
            String[] cells = line.split(",");
            if (line.startsWith("# document: ")) {
                document = line.substring("# document: ".length());
            } else if (!line.startsWith("#") && !line.startsWith("size,")) {
                rows.add(new PrintedRow(
                        document, cells[0], cells[1], cells[2], Double.parseDouble(cells[3]), Double.parseDouble(cells[4])));
            }
        }
        return rows;
    }

    /** Every figure of one column of a list. */
    public static List<PrintedRow> read(String list, String column) {
        return read(list).stream().filter(row -> row.column().equals(column)).toList();
    }

    /** Document, size and column, to name a test. */
    public String name() {
        return document + ", " + size + ", " + column;
    }

    private static List<String> lines(String list) {
        try {
            return Files.readAllLines(Path.of("src/test/resources/published/" + list + ".csv"));
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }
}
