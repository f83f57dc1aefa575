package loomwright.circuit.page;

import java.util.List;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.MainFigures;
import loomwright.markup.Html;

/** The circuits kept on a device: their names to choose from, and their main figures side by side. */
public final class ShelfMarkup {
    private ShelfMarkup() {}

    /**
     * One of the circuits.
     *
     * @param place its place, from 1
     * @param examination what was found for it; null if it cannot be read
     */
    public record Kept(int place, Examination examination) {
        String name() {
            String name = examination == null ? "cannot be read" : examination.circuit().name();
            return place + ": " + (name.isEmpty() ? "without a name" : name);
        }
    }

    /** The names, as options of a choice. */
    public static String options(List<Kept> kept, int here) {
        Html html = new Html();
        for (Kept each : kept) {
            html.tag("<option").attribute("value", Integer.toString(each.place())).tag(each.place() == here ? " selected>" : ">");
            html.text(each.name()).tag("</option>");
        }
        return html.toString();
    }

    /** The main figures, a column a circuit. */
    public static String table(List<Kept> kept, int here) {
        if (kept.size() < 2) {
            return "<p class=\"help\">Only one circuit is kept here. Put a copy beside it, change the copy, and compare the two.</p>";
        }
        String[] heads = new String[kept.size() + 1];
        heads[0] = "Figure";
        String[][] figures = new String[kept.size()][];
        for (int i = 0; i < kept.size(); i++) {
            heads[i + 1] = kept.get(i).name() + (kept.get(i).place() == here ? " (on the desk)" : "") + "#";
            figures[i] = MainFigures.of(kept.get(i).examination());
        }
        Html html = new Html();
        TableHtml table = new TableHtml(html, "Main figures side by side", heads);
        for (int row = 0; row < MainFigures.LABELS.size(); row++) {
            table.row(MainFigures.LABELS.get(row));
            for (String[] each : figures) {
                table.number(each[row]);
            }
            table.endRow();
        }
        table.end();
        return html.toString();
    }
}
