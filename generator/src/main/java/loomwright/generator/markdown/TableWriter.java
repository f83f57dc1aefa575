package loomwright.generator.markdown;

import com.vladsch.flexmark.ext.tables.TableBlock;
import com.vladsch.flexmark.ext.tables.TableBody;
import com.vladsch.flexmark.ext.tables.TableCell;
import com.vladsch.flexmark.ext.tables.TableHead;
import com.vladsch.flexmark.util.ast.Node;
import loomwright.markup.Html;

/** Writes a table of Markdown. Its first column names the rows; a column aligned right holds numbers. */
final class TableWriter {
    private final StringBuilder out;
    private final InlineWriter inline;

    TableWriter(StringBuilder out, InlineWriter inline) {
        this.out = out;
        this.inline = inline;
    }

    /** The label of the box must be unlike that of every other table of the page, so it begins with the first words of the table. */
    void write(TableBlock table) {
        int start = out.length();
        for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
            if (part instanceof TableHead) {
                part("thead", part);
            } else if (part instanceof TableBody) {
                part("tbody", part);
            }
        }
        String rows = out.substring(start);
        out.setLength(start);
        String label = unlikeOthers("Table: " + firstRow(table));
        out.append("<div class=\"scroll\" role=\"region\" tabindex=\"0\" aria-label=\"").append(label).append("\">\n");
        out.append("<table aria-label=\"").append(label).append("\">\n").append(rows).append("</table>\n</div>\n");
    }

    /** With a number, if a table before it on the page has the same head. */
    private String unlikeOthers(String label) {
        String unlike = label;
        for (int number = 2; out.indexOf("<table aria-label=\"" + unlike + "\"") >= 0; number++) {
            unlike = label + ", " + number;
        }
        return unlike;
    }

    private void part(String element, Node part) {
        out.append('<').append(element).append(">\n");
        for (Node row = part.getFirstChild(); row != null; row = row.getNext()) {
            out.append("<tr>");
            boolean first = true;
            for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
                if (cell instanceof TableCell tableCell) {
                    cell(tableCell, part instanceof TableHead ? "col" : first ? "row" : "");
                    first = false;
                }
            }
            out.append("</tr>\n");
        }
        out.append("</").append(element).append(">\n");
    }

    private void cell(TableCell cell, String scope) {
        String element = scope.isEmpty() ? "td" : "th";
        out.append('<').append(element);
        if (!scope.isEmpty()) {
            out.append(" scope=\"").append(scope).append('"');
        }
        out.append(cell.getAlignment() == TableCell.Alignment.RIGHT ? " class=\"number\">" : ">");
        inline.children(cell);
        out.append("</").append(element).append('>');
    }

    private String firstRow(TableBlock table) {
        int start = out.length();
        StringBuilder words = new StringBuilder();
        for (Node cell = table.getFirstChild().getFirstChild().getFirstChild(); cell != null; cell = cell.getNext()) {
            inline.childrenWithoutLinks(cell);
            words.append(words.length() == 0 ? "" : ", ").append(PlainText.of(out.substring(start)));
            out.setLength(start);
        }
        return Html.escape(words.toString());
    }
}
