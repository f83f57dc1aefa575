package loomwright.site;

import java.util.ArrayList;
import java.util.List;
import loomwright.catalogue.Catalogue;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Question;
import loomwright.markup.Fragment;
import loomwright.worked.Calculator;

/** The questions of the workshop page as it was built. */
final class WorkshopLessons {
    private WorkshopLessons() {}

    static List<LessonQuestions> read() {
        List<LessonQuestions> lessons = new ArrayList<>();
        BuiltSite.page("workshop.html").select("[data-lesson]").forEach(lesson -> {
            List<Question> questions = new ArrayList<>();
            lesson.select("data").forEach(each -> {
                Calculator calculator = Catalogue.find(each.attr("data-calculator"));
                String keep = each.attr("data-keep");
                questions.add(new Question(
                        each.attr("value"), each.attr("data-title"), each.attr("data-scene"), calculator, Fragment.read(each.attr("data-given")),
                        keep.isEmpty() ? List.of() : List.of(keep.split(" ")), calculator.description().output(each.attr("data-result"))));
            });
            lessons.add(new LessonQuestions(lesson.attr("data-lesson"), lesson.attr("data-title"), questions, 0));
        });
        return lessons;
    }
}
