package loomwright.workshop;

import java.util.List;
import loomwright.handout.LessonQuestions;
import loomwright.markup.Html;
import loomwright.markup.Links;

/** The plan of a day as a page shows and prints it. */
public final class DayMarkup {
    private final DayPlan plan;
    private final List<LessonQuestions> lessons;
    private final Links links;
    private final Html html = new Html();

    private DayMarkup(DayPlan plan, List<LessonQuestions> lessons, Links links) {
        this.plan = plan;
        this.lessons = lessons;
        this.links = links;
    }

    /**
     * The whole plan.
     *
     * @param lessons the lessons of the site, for their names
     * @param links where they stand; {@link Links#NONE} for paper
     * @param printed what is printed, or an empty list if no sheets were made
     */
    public static String of(DayPlan plan, List<LessonQuestions> lessons, Links links, List<Item> printed) {
        DayMarkup markup = new DayMarkup(plan, lessons, links);
        markup.hours();
        markup.html.tag("<p class=\"leading\">").text(plan.leading()).tag("</p>");
        markup.table("Room and supplies", plan.room());
        markup.table("Safety", plan.safety());
        markup.table("Tools to bring", plan.tools());
        markup.table("Material to buy", plan.material());
        markup.table("Parts of the demonstration boards", plan.boardParts());
        if (!printed.isEmpty()) {
            markup.table("To print", printed);
        }
        return markup.html.toString();
    }

    private void hours() {
        String name = plan.hours() + " hours, " + plan.people() + (plan.people() == 1 ? " person" : " people");
        html.tag("<h3>").text("Hour by hour: " + name).tag("</h3><div class=\"scroll\" role=\"region\" tabindex=\"0\" aria-label=\"Hour by hour\"><table aria-label=\"Hour by hour\"><thead><tr>");
        html.tag("<th scope=\"col\">Time</th><th scope=\"col\">Minutes</th><th scope=\"col\">What</th><th scope=\"col\">How</th></tr></thead><tbody>");
        for (Timetable.Line line : Timetable.of(plan.hours())) {
            html.tag("<tr><td>").text(line.time()).tag("</td><td>").text(Integer.toString(line.minutes())).tag("</td><td>").text(line.words());
            lesson(line.lesson());
            html.tag("</td><td>").text(line.how()).tag("</td></tr>");
        }
        html.tag("</tbody></table></div>");
    }

    private void lesson(String end) {
        for (LessonQuestions lesson : lessons) {
            if (!end.isEmpty() && lesson.key().endsWith("-" + end)) {
                html.tag(" (");
                if (links.root() == null) {
                    html.text("lesson " + lesson.title());
                } else {
                    html.tag("<a").attribute("href", links.lesson(lesson.key())).tag(">").text("lesson " + lesson.title()).tag("</a>");
                }
                html.tag(")");
            }
        }
    }

    private void table(String title, List<Item> items) {
        html.tag("<h3>").text(title).tag("</h3><div class=\"scroll\" role=\"region\" tabindex=\"0\"").attribute("aria-label", title).tag("><table").attribute("aria-label", title).tag("><thead><tr>");
        html.tag("<th scope=\"col\">What</th><th scope=\"col\">How many</th><th scope=\"col\">Rule (common practice)</th></tr></thead><tbody>");
        for (Item item : items) {
            html.tag("<tr><td>").text(item.name()).tag("</td><td><strong class=\"value\">").text(item.amount()).tag("</strong></td><td>").text(item.rule()).tag("</td></tr>");
        }
        html.tag("</tbody></table></div>");
    }
}
