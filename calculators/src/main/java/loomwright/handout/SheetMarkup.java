package loomwright.handout;

import loomwright.markup.GivenMarkup;
import loomwright.markup.Html;
import loomwright.worked.Output;

/** The sheet of one person, to be printed: it begins a new page. */
public final class SheetMarkup {
    private static final int FEWEST_LINES = 3;
    private static final int MOST_LINES = 7;

    private SheetMarkup() {}

    /**
     * The sheet.
     *
     * @param house whose sheet it is: the name of the site or of the club, with its contact
     */
    public static String of(Sheet sheet, String house) {
        String name = "Question sheet " + sheet.person();
        Html html = new Html().tag("<section class=\"handout\"").attribute("aria-label", name).tag(">");
        html.tag("<p class=\"house\">").text(house).tag("</p><h2>").text(name).tag("</h2>");
        html.tag("<dl class=\"head\"><div class=\"wide\"><dt>Name</dt><dd class=\"blank\"></dd></div>");
        html.tag("<div><dt>Date</dt><dd class=\"blank\"></dd></div><div><dt>Code of this sheet</dt><dd class=\"code\">");
        html.text(sheet.code()).tag("</dd></div></dl>");
        html.tag("<p class=\"facts\">The numbers on this sheet are yours alone. Write the working down, not only the answer: the key shows every "
                + "step. They are for practice; a real circuit is worked out from its own figures.</p>");
        int number = 1;
        for (Task task : sheet.tasks()) {
            task(html, task, number, sheet.person());
            number++;
        }
        return html.tag("</section>\n").toString();
    }

    private static void task(Html html, Task task, int number, int person) {
        Output asked = task.question().asked();
        html.tag("<div class=\"asked\"><h3>").text(number + "  " + task.title());
        html.tag(" <span class=\"facts\">sheet ").text(Integer.toString(person)).tag("</span></h3><p class=\"words\">");
        html.text(task.words()).tag("</p>");
        html.tag(GivenMarkup.of(task.question().calculator().description(), task.entries()));
        html.tag("<div class=\"ruled\" aria-hidden=\"true\">");
        int lines = Math.max(FEWEST_LINES, Math.min(MOST_LINES, task.working().steps().size() + 1));
        for (int i = 0; i < lines; i++) {
            html.tag("<p></p>");
        }
        html.tag("</div><p class=\"answer-line\">").text(asked.label()).tag(" <span class=\"blank\"></span> ");
        html.text(asked.unit().symbol()).tag("</p></div>");
    }
}
