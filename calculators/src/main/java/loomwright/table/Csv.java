package loomwright.table;

import java.util.ArrayList;
import java.util.List;

/** Cuts comma-separated text into lines of cells; a cell in double quotes may hold commas and doubled quotes. */
final class Csv {
    private Csv() {}

    /** The cells of one line. */
    static List<String> cells(String line, int lineNumber, TableWording wording) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                if (quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                    cell.append('"');
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        if (quoted) {
            throw wording.fault(lineNumber, "quote", "");
        }
        cells.add(cell.toString());
        return cells;
    }

    /** The lines of a text, without their ends. */
    static List<String> lines(String text) {
        List<String> lines = new ArrayList<>();
        int from = 0;
        while (from < text.length()) {
            int end = text.indexOf('\n', from);
            int stop = end < 0 ? text.length() : end;
            int trimmed = stop > from && text.charAt(stop - 1) == '\r' ? stop - 1 : stop;
            lines.add(text.substring(from, trimmed));
            from = stop + 1;
        }
        return lines;
    }
}
