package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import loomwright.catalogue.Catalogue;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Question;
import loomwright.markup.Fragment;
import loomwright.worked.Calculator;
import loomwright.worked.Output;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** The page of the workshop day: makes sheets, and marks a sheet by its code. */
final class Workshop {
    private Workshop() {}

    static void mount(HTMLDocument document) {
        HTMLElement form = document.querySelector("#kit");
        if (form != null) {
            List<LessonQuestions> lessons = lessons(form);
            new SheetMaker(document, form, lessons, new DayForm(document, lessons));
            new SheetMarking(document, lessons);
            document.querySelector("#kit-without").setHidden(true);
        }
    }

    /** The questions, as the generator wrote them into the page. */
    static List<LessonQuestions> lessons(HTMLElement form) {
        List<LessonQuestions> lessons = new ArrayList<>();
        NodeList<? extends HTMLElement> parts = form.querySelectorAll("[data-lesson]");
        for (int i = 0; i < parts.getLength(); i++) {
            HTMLElement part = parts.get(i);
            List<Question> questions = new ArrayList<>();
            NodeList<? extends HTMLElement> written = part.querySelectorAll("data[value]");
            for (int j = 0; j < written.getLength(); j++) {
                questions.add(question(written.get(j)));
            }
            lessons.add(new LessonQuestions(part.getAttribute("data-lesson"), part.getAttribute("data-title"), part.hasAttribute("data-day"), questions));
        }
        return lessons;
    }

    private static Question question(HTMLElement written) {
        String key = written.getAttribute("value");
        String title = written.getAttribute("data-title");
        String told = written.getAttribute("data-words");
        String because = written.getAttribute("data-because");
        Calculator calculator = Catalogue.find(written.getAttribute("data-calculator"));
        if (calculator == null) {
            return Question.inWords(key, title, told, because);
        }
        List<Output> asked = new ArrayList<>();
        words(written.getAttribute("data-results")).forEach(result -> asked.add(calculator.description().output(result)));
        return new Question(
                key, title, told, written.hasAttribute("data-varies"), calculator, Fragment.read(written.getAttribute("data-given")),
                words(written.getAttribute("data-keep")), asked, because);
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        int from = 0;
        while (text != null && from < text.length()) {
            int end = text.indexOf(' ', from);
            end = end < 0 ? text.length() : end;
            words.add(text.substring(from, end));
            from = end + 1;
        }
        return words;
    }
}
