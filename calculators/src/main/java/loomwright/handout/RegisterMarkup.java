package loomwright.handout;

import java.util.ArrayList;
import java.util.List;
import loomwright.markup.Html;

/** The register: who has which sheet, and which questions stand on it. Its rows are shared out evenly over its pages. */
final class RegisterMarkup {
    private static final double HEAD = 42;
    private static final double COLUMN_HEAD = 12;
    private static final double ROW = 9.8;
    private static final double LINE = 5;
    private static final double LIST_HEAD = 14;

    private RegisterMarkup() {}

    static List<String> pages(Handout handout, List<Sheet> sheets, int seed, String house, Paper paper) {
        int most = (int) ((paper.room() - HEAD - COLUMN_HEAD) / ROW);
        int parts = (sheets.size() + most - 1) / most;
        List<Block> blocks = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            List<Sheet> rows = sheets.subList(sheets.size() * part / parts, sheets.size() * (part + 1) / parts);
            // A table after the first begins a page, for the one before fills its own.
            blocks.add(new Block(table(handout, rows), part < parts - 1 ? paper.room() : COLUMN_HEAD + ROW * rows.size()));
        }
        blocks.add(list("On every sheet", "", handout.asked()));
        if (!handout.leftOut().isEmpty()) {
            blocks.add(list(
                    "Left out", "Too few other round numbers give these questions another answer without a check that stops, so people would share one.", handout.leftOut()));
        }
        List<String> bodies = Block.pages(blocks, paper.room() - HEAD, paper.room() - HEAD);
        List<String> pages = new ArrayList<>();
        for (int i = 0; i < bodies.size(); i++) {
            String of = bodies.size() == 1 ? "" : ", page " + (i + 1) + " of " + bodies.size();
            Html html = new Html().tag("<section class=\"handout register\"").attribute("aria-label", "Register" + of).tag("><p class=\"house\">").text(house + of);
            html.tag("</p>");
            if (i == 0) {
                html.tag("<h2>Register</h2><dl class=\"head\"><div class=\"wide\"><dt>Place</dt><dd class=\"blank\"></dd></div><div><dt>Date</dt>");
                html.tag("<dd class=\"blank\"></dd></div><div><dt>Set number</dt><dd class=\"code\">").text(Integer.toString(seed)).tag("</dd></div></dl>");
            }
            pages.add(html.tag(bodies.get(i)).tag("</section>\n").toString());
        }
        return pages;
    }

    private static String table(Handout handout, List<Sheet> rows) {
        Html html = new Html().tag("<table><thead><tr><th scope=\"col\">Sheet</th><th scope=\"col\">Name</th><th scope=\"col\">Code</th>");
        html.tag("<th scope=\"col\">Right, of ").text(Integer.toString(handout.asked().size())).tag("</th></tr></thead><tbody>");
        for (Sheet sheet : rows) {
            html.tag("<tr><th scope=\"row\">").text(Integer.toString(sheet.person())).tag("</th><td class=\"room\"></td><td class=\"code\">");
            html.text(sheet.code()).tag("</td><td></td></tr>");
        }
        return html.tag("</tbody></table>").toString();
    }

    private static Block list(String title, String words, List<Question> questions) {
        Html html = new Html().tag("<h3>").text(title).tag("</h3>").tag(words.isEmpty() ? "" : "<p>").text(words).tag(words.isEmpty() ? "<ol>" : "</p><ul>");
        double height = LIST_HEAD + (words.isEmpty() ? 0 : 2 * LINE + 2);
        for (Question question : questions) {
            String name = name(question);
            html.tag("<li>").text(name).tag("</li>");
            height += LINE * TextWidth.lines(name, TextWidth.SHEET - 6);
        }
        return new Block(html.tag(words.isEmpty() ? "</ol>" : "</ul>").toString(), height);
    }

    private static String name(Question question) {
        String name = question.varies() ? Scene.filled(question.title(), question.given()) : question.title();
        StringBuilder text = new StringBuilder(name);
        for (int i = 0; i < question.asked().size(); i++) {
            String label = question.asked().get(i).label();
            text.append(label.equals(name) ? "" : (i == 0 ? ": " : ", ") + label);
        }
        return text.toString();
    }
}
