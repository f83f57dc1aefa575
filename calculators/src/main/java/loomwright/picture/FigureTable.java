package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * The figures of a picture as rows of text.
 *
 * @param heads what each column holds, with its unit
 * @param rows one cell for each head
 */
public record FigureTable(List<String> heads, List<List<String>> rows) {
    /** For a picture whose labels say everything. */
    public static final FigureTable NONE = new FigureTable(List.of(), List.of());

    /** This table with the columns of another beside it, less the first, which both share. */
    FigureTable beside(FigureTable other) {
        if (heads.isEmpty()) {
            return other;
        }
        List<String> allHeads = new ArrayList<>(heads);
        allHeads.addAll(other.heads.subList(1, other.heads.size()));
        List<List<String>> allRows = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            List<String> row = new ArrayList<>(rows.get(i));
            row.addAll(other.rows.get(i).subList(1, other.heads.size()));
            allRows.add(row);
        }
        return new FigureTable(allHeads, allRows);
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }
}
