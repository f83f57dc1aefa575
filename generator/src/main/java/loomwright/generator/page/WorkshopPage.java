package loomwright.generator.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loomwright.generator.markdown.PlainText;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Paper;
import loomwright.handout.Question;
import loomwright.handout.Selection;
import loomwright.markup.Fragment;
import loomwright.markup.Links;
import loomwright.worked.Output;
import loomwright.workshop.DayMarkup;
import loomwright.workshop.DayPlan;
import loomwright.workshop.Timetable;

/** Writes the page of the workshop day, if an author wrote its text: the plan, and the questions its program makes sheets of. */
final class WorkshopPage {
    private static final String KEY = "workshop";
    private static final String ADDRESS = KEY + ".html";

    /** The record of workshop.mustache. */
    record Page(Frame frame, String title, String intro, List<Choice> lessons, int each, DayPlan day, String plan, int mostHours, int leastHours, List<Size> papers, String house, String body) {}

    /** Paper to choose. */
    record Size(String key, String label) {}

    /** A lesson to choose, with its questions; {@code inPath} if it belongs to the workshop day. */
    record Choice(String key, String title, boolean inPath, String facts, List<Asked> questions) {}

    /** A question as the page's program reads it. */
    record Asked(String key, String title, String words, String varies, String calculator, String given, String keep, String results, String because) {}

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
                choices(questions),
                Selection.USUAL,
                DayPlan.USUAL,
                DayMarkup.of(DayPlan.USUAL, questions, new Links(""), List.of()),
                Timetable.MOST_HOURS,
                Timetable.LEAST_HOURS,
                Arrays.stream(Paper.values()).map(paper -> new Size(paper.key(), paper.label())).toList(),
                site.content().house(),
                intro.html().substring(split));
        sink.page(ADDRESS, templates.fill(KEY, page), intro.places());
        search.add(intro.title(), ADDRESS, "page", intro.summary(), PlainText.of(intro.html()));
    }

    private static List<Choice> choices(List<LessonQuestions> lessons) {
        List<Choice> choices = new ArrayList<>();
        for (LessonQuestions lesson : lessons) {
            int varying = lesson.varying();
            int alike = lesson.questions().size() - varying;
            String facts = varying + " with numbers, " + alike + " alike for everyone";
            choices.add(new Choice(lesson.key(), lesson.title(), lesson.inDay(), facts, lesson.questions().stream().map(WorkshopPage::asked).toList()));
        }
        return choices;
    }

    private static Asked asked(Question question) {
        return new Asked(
                question.key(),
                question.title(),
                question.words(),
                question.varies() ? "yes" : "",
                question.isInWords() ? "" : question.calculator().description().key(),
                Fragment.write(question.given()),
                String.join(" ", question.keep()),
                String.join(" ", question.asked().stream().map(Output::key).toList()),
                question.because());
    }
}
