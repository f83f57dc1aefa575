package loomwright.circuit.page;

import loomwright.markup.Html;

/** A table of a sheet, in a box that scrolls sideways where it must. */
final class TableHtml {
    private final Html html;

    /** @param heads the heads of the columns; one that ends in {@code #} stands over numbers */
    TableHtml(Html html, String label, String... heads) {
        this.html = html;
        html.tag("<div class=\"scroll\" role=\"region\" tabindex=\"0\"").attribute("aria-label", "Table: " + label).tag("><table class=\"dense\"");
        html.attribute("aria-label", label).tag("><thead><tr>");
        for (String head : heads) {
            boolean number = head.endsWith("#");
            html.tag(number ? "<th scope=\"col\" class=\"number\">" : "<th scope=\"col\">");
            html.text(number ? head.substring(0, head.length() - 1) : head).tag("</th>");
        }
        html.tag("</tr></thead><tbody>");
    }

    TableHtml row(String head) {
        html.tag("<tr><th scope=\"row\">").text(head).tag("</th>");
        return this;
    }

    TableHtml words(String words) {
        html.tag("<td>").text(words).tag("</td>");
        return this;
    }

    TableHtml number(String figure) {
        html.tag("<td class=\"number\">").text(figure).tag("</td>");
        return this;
    }

    TableHtml cell(String markup) {
        html.tag("<td>").tag(markup).tag("</td>");
        return this;
    }

    void endRow() {
        html.tag("</tr>");
    }

    void end() {
        html.tag("</tbody></table></div>");
    }
}
