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

    /** The anchor of the lessons of a club. */
    static final String CLUB = "club";

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
        List<Path> paths = new ArrayList<>();
        if (front == null || front.paths().isEmpty()) {
            paths.add(new Path("all", "All lessons", "In this order.", entries(List.of())));
        } else {
            front.paths().forEach(path -> paths.add(new Path(path.key(), path.title(), path.words(), entries(path.lessons()))));
        }
        List<Entry> own = site.content().lessons().stream().filter(site.content()::isOfClub).map(this::entry).toList();
        if (!own.isEmpty()) {
            paths.add(new Path(CLUB, ClubOnStart.titleOfLessons(site.content().club()), "Written for this copy of the site.", own));
        }
        return paths;
    }

    private List<Entry> entries(List<Scalar> keys) {
        List<Lesson> all = site.content().lessons();
        List<Entry> entries = new ArrayList<>();
        if (keys.isEmpty()) {
            all.stream().filter(lesson -> !site.content().isOfClub(lesson)).forEach(lesson -> entries.add(entry(lesson)));
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

    private Entry entry(Lesson lesson) {
        return new Entry(lesson.number(), lesson.title(), lesson.address(), lesson.goal(), LessonTime.minutes(lesson, site.book()));
    }
}
