package loomwright.handout;

import loomwright.markup.AnswerMarkup;
import loomwright.markup.GivenMarkup;
import loomwright.markup.Html;
import loomwright.markup.OutcomeMarkup;
import loomwright.markup.Place;

/** The questions of one sheet in the page, to be marked by the one who has the sheet. */
public final class TaskMarkup {
    private TaskMarkup() {}

    /** What stands above the questions. */
    public static String head(Sheet sheet) {
        Html html = new Html().tag("<h3 tabindex=\"-1\">").text("Sheet " + sheet.person()).tag(" <span class=\"code\">");
        return html.text(sheet.code()).tag("</span></h3>").toString();
    }

    /** One question, the box for its answer, and the working, folded. */
    public static String marked(Place place, Task task, int number) {
        Html html = new Html().tag("<section class=\"marked\"").attribute("id", place.key());
        html.attribute("aria-labelledby", place.key() + "-title").tag("><h3").attribute("id", place.key() + "-title").tag(">");
        html.text(number + "  " + task.title()).tag("</h3><p>").text(task.words()).tag("</p>");
        html.tag(GivenMarkup.of(task.question().calculator().description(), task.entries()));
        html.tag(AnswerMarkup.form(place, task.question().asked()));
        html.tag("<details><summary>Every step of the working</summary>").tag(OutcomeMarkup.steps(place.links(), task.working()));
        return html.tag("</details></section>").toString();
    }
}
