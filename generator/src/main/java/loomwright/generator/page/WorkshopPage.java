package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.generator.markdown.PlainText;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Question;
import loomwright.markup.Fragment;

/** Writes the page of the workshop day, if an author wrote its text: the plan, and the questions its program makes sheets of. */
final class WorkshopPage {
    private static final String KEY = "workshop";
    private static final String ADDRESS = KEY + ".html";

    /** The record of workshop.mustache. */
    record Page(Frame frame, String title, String intro, List<Choice> lessons, String house, String body) {}

    /** A lesson to choose, with its questions; {@code inPath} if it belongs to the workshop day. */
    record Choice(String key, String title, boolean inPath, String facts, List<Asked> questions) {}

    /** A question as the page's program reads it. */
    record Asked(String key, String title, String scene, String calculator, String given, String keep, String result) {}

    private WorkshopPage() {}

    static void write(
            Site site, Frames frames, Templates templates, SearchData search, List<LessonQuestions> questions, PageSink sink) {
        if (!site.content().fronts().containsKey(KEY)) {
            return;
        }
        Intro intro = Intro.of(site, KEY, "Workshop day");
        int firstSection = intro.html().indexOf("<h2");
        int split = firstSection < 0 ? intro.html().length() : firstSection;
        Page page = new Page(
                frames.of(intro.title(), intro.summary(), ADDRESS),
                intro.title(),
                intro.html().substring(0, split),
                choices(site, questions),
                site.content().house(),
                intro.html().substring(split));
        sink.page(ADDRESS, templates.fill(KEY, page), intro.places());
        search.add(intro.title(), ADDRESS, "page", intro.summary(), PlainText.of(intro.html()));
    }

    private static List<Choice> choices(Site site, List<LessonQuestions> lessons) {
        List<String> day = ofTheDay(site);
        List<Choice> choices = new ArrayList<>();
        for (LessonQuestions lesson : lessons) {
            List<Asked> asked = lesson.questions().stream().map(WorkshopPage::asked).toList();
            int count = asked.size();
            String facts = count == 0 ? "no question with a number" : count == 1 ? "1 question" : count + " questions";
            choices.add(new Choice(lesson.key(), lesson.title(), day.contains(lesson.key()) && count > 0, facts, asked));
        }
        return choices;
    }

    /** The lessons of the path called {@code workshop-day}. */
    private static List<String> ofTheDay(Site site) {
        List<String> keys = new ArrayList<>();
        if (site.content().fronts().get("lessons") != null) {
            site.content().fronts().get("lessons").paths().stream()
                    .filter(path -> path.key().equals("workshop-day"))
                    .forEach(path -> path.lessons().forEach(lesson -> keys.add(lesson.text())));
        }
        return keys;
    }

    private static Asked asked(Question question) {
        return new Asked(
                question.key(),
                question.title(),
                question.scene(),
                question.calculator().description().key(),
                Fragment.write(question.given()),
                String.join(" ", question.keep()),
                question.asked().key());
    }
}
