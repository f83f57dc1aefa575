package loomwright.markup;

import java.util.List;
import loomwright.picture.FigureTable;
import loomwright.picture.Picture;

/** Pictures in a page, with the figures they show. */
public final class PictureMarkup {
    private PictureMarkup() {}

    /** The graph of an example: a {@code figure} that the page program finds again; empty if there is no picture. */
    public static String graph(String exampleKey, Picture picture) {
        if (picture == null) {
            return "";
        }
        String id = Html.escape(exampleKey) + "-graph";
        return "<figure class=\"figure graph\" id=\"" + id + "\">" + inside(id, picture) + "</figure>\n";
    }

    /** The graph alone, for a screen; empty if there is no picture. */
    public static String projected(String exampleKey, Picture picture) {
        return picture == null ? "" : "<figure class=\"figure\">" + picture.svg(Html.escape(exampleKey) + "-graph") + "</figure>\n";
    }

    /** The inside of that figure: the picture, its figures as a folded table, and its title as the caption, which the picture says itself. */
    public static String inside(String id, Picture picture) {
        return picture.svg(id) + figures(picture.figures(), picture.title()) + "<figcaption aria-hidden=\"true\">" + Html.escape(picture.title()) + "</figcaption>";
    }

    /** The figures of a picture as a folded table, for a reader who cannot see it and for one who wants to copy them. */
    public static String figures(FigureTable table, String title) {
        if (table.isEmpty()) {
            return "";
        }
        String label = " aria-label=\"Figures of: " + Html.escape(title) + "\"";
        StringBuilder out = new StringBuilder("\n<details class=\"figures\"><summary>The same in figures</summary>");
        out.append("<div class=\"scroll\" role=\"region\" tabindex=\"0\"").append(label).append("><table").append(label).append(">\n");
        out.append("<thead><tr>");
        for (String head : table.heads()) {
            out.append("<th scope=\"col\">").append(Html.escape(head)).append("</th>");
        }
        out.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : table.rows()) {
            out.append("<tr>");
            for (int i = 0; i < row.size(); i++) {
                out.append(i == 0 ? "<th scope=\"row\">" : "<td>").append(Html.escape(row.get(i))).append(i == 0 ? "</th>" : "</td>");
            }
            out.append("</tr>\n");
        }
        return out.append("</tbody>\n</table></div></details>").toString();
    }
}
