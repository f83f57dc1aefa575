package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import loomwright.handout.LessonQuestions;
import loomwright.markup.Links;
import loomwright.workshop.DayMarkup;
import loomwright.workshop.DayPlan;
import loomwright.workshop.Item;
import loomwright.workshop.Timetable;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** People, leaders and hours of the day: asked once, and the plan and the sheets follow. */
final class DayForm {
    private static final String PEOPLE = "day-people";

    private final HTMLDocument document;
    private final List<LessonQuestions> lessons;
    private final HTMLElement made;
    private List<Item> printed = new ArrayList<>();

    DayForm(HTMLDocument document, List<LessonQuestions> lessons) {
        this.document = document;
        this.lessons = lessons;
        this.made = document.querySelector("#day-made");
        HTMLElement form = document.querySelector("#day");
        form.setHidden(false);
        form.addEventListener("submit", event -> event.preventDefault());
        form.addEventListener("change", event -> {
            printed = new ArrayList<>();
            show();
        });
        Dom.onEnter(form, this::show);
        document.querySelector("#day-print").addEventListener("click", event -> print());
    }

    /** How many people take part; 0 if that cannot be read, which is said beside the field. */
    int people() {
        return WholeNumber.read(document, "#day-error", PEOPLE, 1, DayPlan.MOST_PEOPLE, "The number of people");
    }

    /** The sheets are made: the plan says what that is to print. */
    void printed(int pagesOfOne, int tables, int others) {
        DayPlan plan = plan();
        printed = plan == null ? new ArrayList<>() : plan.printing(pagesOfOne, tables, others);
        show();
    }

    private DayPlan plan() {
        document.querySelector("#day-error").setInnerHTML("");
        int people = people();
        int leaders = WholeNumber.read(document, "#day-error", "day-leaders", 1, DayPlan.MOST_LEADERS, "The number of leaders");
        int hours = WholeNumber.read(document, "#day-error", "day-hours", Timetable.LEAST_HOURS, Timetable.MOST_HOURS, "The number of hours");
        return people == 0 || leaders == 0 || hours == 0 ? null : new DayPlan(people, leaders, hours);
    }

    private void show() {
        DayPlan plan = plan();
        if (plan != null) {
            made.setInnerHTML(DayMarkup.of(plan, lessons, new Links(""), printed));
            document.querySelector("#day-said").setTextContent(plan.leading());
        }
    }

    private void print() {
        HTMLElement page = document.getDocumentElement();
        Dom.mark(page, "day-only", true);
        Dom.once(Window.current(), "afterprint", () -> Dom.mark(page, "day-only", false));
        Dom.print();
    }
}
