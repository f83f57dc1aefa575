package loomwright.handout;

import java.util.ArrayList;
import java.util.List;
import loomwright.markup.Html;
import loomwright.worked.Output;

/** All answers at a glance: a row a sheet, a column a box; behind them what everyone was asked alike. */
final class AnswersMarkup {
    private static final int COLUMNS = 6;
    private static final double HEAD = 26;
    private static final double RUNNING = 8;
    private static final double ROW = 6;
    private static final double COLUMN_HEAD = 22;

    /** A box of the sheet: a question and one thing it asks. */
    private record Box(int task, Output asked) {}

    private final List<Sheet> sheets;
    private final List<Box> boxes = new ArrayList<>();

    private AnswersMarkup(List<Sheet> sheets) {
        this.sheets = sheets;
        List<Task> tasks = sheets.get(0).tasks();
        for (int i = 0; i < tasks.size(); i++) {
            for (Output asked : tasks.get(i).question().varies() ? tasks.get(i).question().asked() : List.<Output>of()) {
                boxes.add(new Box(i, asked));
            }
        }
    }

    static List<String> pages(List<Sheet> sheets, String house, Paper paper) {
        AnswersMarkup markup = new AnswersMarkup(sheets);
        List<String> bodies = Block.pages(markup.blocks(paper), paper.room() - HEAD, paper.room() - RUNNING);
        List<String> pages = new ArrayList<>();
        for (int i = 0; i < bodies.size(); i++) {
            String of = bodies.size() == 1 ? "" : ", page " + (i + 1) + " of " + bodies.size();
            Html html = new Html().tag("<section class=\"handout key\"").attribute("aria-label", "Answers" + of).tag("><p class=\"house\">").text(house + of).tag("</p>");
            html.tag(i > 0 ? "" : "<h2>Answers</h2><p class=\"facts\">An answer within 1 % of the figure here is right. The workings follow, sheet by sheet.</p>");
            pages.add(html.tag(bodies.get(i)).tag("</section>\n").toString());
        }
        return pages;
    }

    private List<Block> blocks(Paper paper) {
        List<Block> blocks = new ArrayList<>();
        int most = (int) ((paper.room() - HEAD - COLUMN_HEAD) / ROW);
        for (int from = 0; from < boxes.size(); from += COLUMNS) {
            int end = Math.min(boxes.size(), from + COLUMNS);
            int parts = (sheets.size() + most - 1) / most;
            for (int part = 0; part < parts; part++) {
                int first = sheets.size() * part / parts;
                int last = sheets.size() * (part + 1) / parts;
                blocks.add(table(from, end, sheets.subList(first, last)));
            }
        }
        List<Task> tasks = sheets.get(0).tasks();
        for (int i = 0; i < tasks.size(); i++) {
            if (!tasks.get(i).question().varies()) {
                Html html = new Html();
                double height = KeyMarkup.working(html, tasks.get(i), i + 1, "h3");
                blocks.add(new Block(html.toString(), height));
            }
        }
        return blocks;
    }

    private Block table(int from, int end, List<Sheet> rows) {
        Html html = new Html().tag("<div class=\"scroll\" role=\"region\" tabindex=\"0\"");
        html.attribute("aria-label", "Answers " + (from + 1) + " to " + end + ", sheets " + rows.get(0).person() + " to " + rows.get(rows.size() - 1).person());
        html.tag("><table><thead><tr><th scope=\"col\">Sheet</th>");
        for (Box box : boxes.subList(from, end)) {
            html.tag("<th scope=\"col\">").text((box.task() + 1) + " " + box.asked().label()).tag("</th>");
        }
        html.tag("</tr></thead><tbody>");
        for (Sheet sheet : rows) {
            html.tag("<tr><th scope=\"row\">").text(Integer.toString(sheet.person())).tag("</th>");
            for (Box box : boxes.subList(from, end)) {
                html.tag("<td><span class=\"value\">").text(sheet.tasks().get(box.task()).answerText(box.asked())).tag("</span></td>");
            }
            html.tag("</tr>");
        }
        return new Block(html.tag("</tbody></table></div>").toString(), COLUMN_HEAD + ROW * rows.size());
    }
}
