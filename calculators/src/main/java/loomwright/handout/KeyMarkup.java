package loomwright.handout;

import java.util.List;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.OutcomeMarkup;
import loomwright.worked.AnswerCheck;
import loomwright.worked.Slip;

/** The answer key: all answers at a glance, then every working of every person. */
public final class KeyMarkup {
    private static final int COLUMNS = 5;

    private KeyMarkup() {}

    /** The page of all answers, for marking at a glance. */
    public static String glance(List<Sheet> sheets, String house) {
        Html html = new Html().tag("<section class=\"handout key\" aria-label=\"Answer key\"><p class=\"house\">").text(house);
        html.tag("</p><h2>Answer key</h2><p class=\"facts\">An answer within 1 % of the figure here is right. Every working follows, sheet by sheet.</p>");
        int count = sheets.isEmpty() ? 0 : sheets.get(0).tasks().size();
        for (int from = 0; from < count; from += COLUMNS) {
            table(html, sheets, from, Math.min(count, from + COLUMNS));
        }
        return html.tag("</section>\n").toString();
    }

    private static void table(Html html, List<Sheet> sheets, int from, int end) {
        html.tag("<div class=\"scroll\" role=\"region\" tabindex=\"0\"").attribute("aria-label", "Answers to questions " + (from + 1) + " to " + end);
        html.tag("><table><thead><tr><th scope=\"col\">Sheet</th>");
        for (int i = from; i < end; i++) {
            html.tag("<th scope=\"col\">").text((i + 1) + " " + sheets.get(0).tasks().get(i).question().asked().label()).tag("</th>");
        }
        html.tag("</tr></thead><tbody>");
        for (Sheet sheet : sheets) {
            html.tag("<tr><th scope=\"row\">").text(Integer.toString(sheet.person())).tag("</th>");
            for (int i = from; i < end; i++) {
                html.tag("<td>").value(sheet.tasks().get(i).answer()).tag("</td>");
            }
            html.tag("</tr>");
        }
        html.tag("</tbody></table></div>");
    }

    /** Every working of one person; it begins a new page. */
    public static String of(Sheet sheet, String house, Links links) {
        String name = "Answers to sheet " + sheet.person();
        Html html = new Html().tag("<section class=\"handout key\"").attribute("aria-label", name).tag("><p class=\"house\">").text(house);
        html.tag("</p><h2>").text(name).tag("</h2><p>Code <span class=\"code\">").text(sheet.code()).tag("</span></p>");
        int number = 1;
        for (Task task : sheet.tasks()) {
            html.tag("<div class=\"asked\"><h3>").text(number + "  " + task.title()).tag("</h3><p class=\"words\">");
            html.text(task.question().asked().label()).tag(" <strong class=\"value\">").text(task.answer().text()).tag("</strong></p>");
            html.tag(OutcomeMarkup.steps(links, task.working()));
            slips(html, task);
            html.tag("</div>");
            number++;
        }
        return html.tag("</section>\n").toString();
    }

    /** What a wrong answer may come from, for the one who goes round the tables. */
    private static void slips(Html html, Task task) {
        boolean any = false;
        for (Slip slip : task.working().slips()) {
            if (slip.output().equals(task.question().asked()) && !AnswerCheck.agrees(slip.value(), task.answer())) {
                html.tag(any ? "<li>" : "<p class=\"words\">Wrong answers and where they come from:</p><ul><li>").value(slip.value());
                html.tag(": ").text(slip.name()).tag("</li>");
                any = true;
            }
        }
        html.tag(any ? "</ul>" : "");
    }
}
