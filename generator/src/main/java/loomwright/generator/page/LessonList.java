package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.generator.content.Front;
import loomwright.generator.content.Lesson;
import loomwright.generator.content.Scalar;
import loomwright.generator.problem.Nearest;

/** Writes the list of lessons, path by path. */
final class LessonList {
    private static final String ADDRESS = "lessons.html";

    /** The record of lessons.mustache. */
    record Page(Frame frame, String title, String intro, List<Path> paths) {}

    /** A path through the lessons. */
    record Path(String id, String title, String words, List<Entry> lessons) {}

    /** A lesson in a path. */
    record Entry(String number, String title, String href, String goal, int minutes) {}

    private final Site site;

    private LessonList(Site site) {
        this.site = site;
    }

    static void write(Site site, Frames frames, Templates templates, PageSink sink) {
        Intro intro = Intro.of(site, "lessons", "Lessons");
        List<Path> paths = new LessonList(site).paths();
        Page page = new Page(frames.of(intro.title(), intro.summary(), ADDRESS), intro.title(), intro.html(), paths);
        sink.page(ADDRESS, templates.fill("lessons", page), intro.places());
    }

    private List<Path> paths() {
        Front front = site.content().fronts().get("lessons");
        if (front == null || front.paths().isEmpty()) {
            return List.of(new Path("all", "All lessons", "In this order.", entries(List.of())));
        }
        return front.paths().stream()
                .map(path -> new Path(path.key(), path.title(), path.words(), entries(path.lessons())))
                .toList();
    }

    private List<Entry> entries(List<Scalar> keys) {
        List<Lesson> all = site.content().lessons();
        List<Entry> entries = new ArrayList<>();
        if (keys.isEmpty()) {
            all.forEach(lesson -> entries.add(entry(lesson)));
        }
        for (Scalar key : keys) {
            List<Lesson> found = all.stream().filter(lesson -> lesson.key().equals(key.text())).toList();
            if (found.isEmpty()) {
                site.problems().add(key.problem(
                        "no lesson is called \"" + key.text() + "\"",
                        Nearest.remedy(key.text(), all.stream().map(Lesson::key).toList())));
            }
            found.forEach(lesson -> entries.add(entry(lesson)));
        }
        return entries;
    }

    private static Entry entry(Lesson lesson) {
        return new Entry(Site.number(lesson), lesson.title(), lesson.address(), lesson.goal(), lesson.minutes());
    }
}
