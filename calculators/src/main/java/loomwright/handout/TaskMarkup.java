package loomwright.handout;

import java.util.List;
import loomwright.markup.AnswerMarkup;
import loomwright.markup.Html;
import loomwright.markup.OutcomeMarkup;
import loomwright.markup.Place;
import loomwright.worked.Finding;

/** The questions of one sheet in the page, to be marked by the one who has the sheet. */
public final class TaskMarkup {
    private TaskMarkup() {}

    /** What stands above the questions. */
    public static String head(Sheet sheet) {
        Html html = new Html().tag("<h3 tabindex=\"-1\">").text("Sheet " + sheet.person()).tag(" <span class=\"code\">");
        return html.text(sheet.code()).tag("</span></h3>").toString();
    }

    /** Where the form of the answer to one of the things stands that a question asks. */
    public static Place place(int number, int box) {
        return new Place("mark-" + number + (box == 0 ? "" : "-" + (box + 1)), new loomwright.markup.Links(""), List.of());
    }

    /** One question, a box for each answer, and the working, folded. */
    public static String marked(Task task, int number) {
        Question question = task.question();
        Place first = place(number, 0);
        Html html = new Html().tag("<section class=\"marked\"").attribute("id", first.key());
        html.attribute("aria-labelledby", first.key() + "-title").tag("><h3").attribute("id", first.key() + "-title").tag(">");
        html.text(number + "  " + task.title()).tag("</h3><p>").text(task.words()).tag("</p>");
        if (!question.isInWords()) {
            html.tag(task.given());
        }
        for (int box = 0; box < question.asked().size(); box++) {
            Place place = place(number, box);
            // A form is named by the question; the second box stands outside the place that the first one names.
            String named = box == 0 ? "" : "<span class=\"unseen\" id=\"" + place.key() + "-title\">" + Html.escape(question.asked().get(box).label()) + "</span>";
            html.tag("<div").attribute("data-box", place.key()).tag(">").tag(named).tag(AnswerMarkup.form(place, question.asked().get(box))).tag("</div>");
        }
        if (question.isInWords()) {
            return html.tag("<details><summary>The answer</summary><p>").text(task.because()).tag("</p></details></section>").toString();
        }
        more(html, task);
        html.tag("<details><summary>Every step of the working</summary>").tag(OutcomeMarkup.steps(first.links(), task.working()));
        return html.tag("</details></section>").toString();
    }

    /** What goes with the answer, shown once there is one: every check that stops, and what the lesson says. */
    private static void more(Html html, Task task) {
        if (!task.stops().isEmpty() || !task.because().isEmpty()) {
            html.tag("<div class=\"more\" hidden>");
            for (Finding stop : task.stops()) {
                html.tag("<p class=\"stop\"><strong>Stop: </strong>").text(Task.sentence(stop.words()) + " " + stop.remedy()).tag("</p>");
            }
            html.tag(task.because().isEmpty() ? "" : "<p>").text(task.because()).tag(task.because().isEmpty() ? "" : "</p>").tag("</div>");
        }
    }
}
