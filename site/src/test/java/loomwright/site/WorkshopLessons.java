package loomwright.site;

import java.util.ArrayList;
import java.util.List;
import loomwright.catalogue.Catalogue;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Question;
import loomwright.markup.Fragment;
import loomwright.worked.Calculator;
import org.jsoup.nodes.Element;

/** The questions of the workshop page as it was built. */
final class WorkshopLessons {
    private WorkshopLessons() {}

    static List<LessonQuestions> read() {
        List<LessonQuestions> lessons = new ArrayList<>();
        BuiltSite.page("workshop.html").select("[data-lesson]").forEach(lesson -> {
            List<Question> questions = new ArrayList<>();
            lesson.select("data").forEach(each -> questions.add(question(each)));
            lessons.add(new LessonQuestions(lesson.attr("data-lesson"), lesson.attr("data-title"), lesson.hasAttr("data-day"), questions));
        });
        return lessons;
    }

    private static Question question(Element each) {
        Calculator calculator = Catalogue.find(each.attr("data-calculator"));
        if (calculator == null) {
            return Question.inWords(each.attr("value"), each.attr("data-title"), each.attr("data-words"), each.attr("data-because"));
        }
        return new Question(
                each.attr("value"), each.attr("data-title"), each.attr("data-words"), each.hasAttr("data-varies"), calculator, Fragment.read(each.attr("data-given")),
                words(each.attr("data-keep")), words(each.attr("data-results")).stream().map(calculator.description()::output).toList(), each.attr("data-because"));
    }

    private static List<String> words(String text) {
        return text.isEmpty() ? List.of() : List.of(text.split(" "));
    }
}
