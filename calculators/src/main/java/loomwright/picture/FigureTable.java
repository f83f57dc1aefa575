package loomwright.picture;

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

    public boolean isEmpty() {
        return rows.isEmpty();
    }
}
