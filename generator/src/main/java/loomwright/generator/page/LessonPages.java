package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.generator.content.Lesson;
import loomwright.generator.content.Scalar;
import loomwright.generator.markdown.Heading;
import loomwright.generator.markdown.Markup;
import loomwright.generator.markdown.PlainText;

/** Writes the lessons. */
final class LessonPages {
    /** The record of lesson.mustache. */
    record Page(
            Frame frame,
            String number,
            String title,
            String goal,
            int minutes,
            Links needs,
            Links contents,
            String body,
            Link previous,
            Link next) {}

    private final Site site;
    private final Frames frames;
    private final Templates templates;
    private final SearchData search;
    private final List<Lesson> lessons;

    LessonPages(Site site, Frames frames, Templates templates, SearchData search) {
        this.site = site;
        this.frames = frames;
        this.templates = templates;
        this.search = search;
        this.lessons = site.content().lessons();
    }

    void write(PageSink sink) {
        for (int i = 0; i < lessons.size(); i++) {
            write(i, sink);
        }
    }

    private void write(int at, PageSink sink) {
        Lesson lesson = lessons.get(at);
        String address = lesson.address();
        ArticleWriter writer = ArticleWriter.of(site, Site.numbered(lesson), lesson.article());
        Markup markup = writer.write(lesson.article().body());
        Page page = new Page(
                frames.of(lesson.title(), lesson.summary(), address),
                Site.number(lesson),
                lesson.title(),
                lesson.goal(),
                lesson.minutes(),
                needs(lesson),
                contents(markup.headings()),
                markup.html(),
                neighbour(address, at - 1),
                neighbour(address, at + 1));
        sink.page(address, templates.fill("lesson", page), writer.places());
        search.add(Site.numbered(lesson), address, "lesson", lesson.summary(), PlainText.of(markup.html()));
    }

    private Links needs(Lesson lesson) {
        List<String> keys = lesson.needs().stream().map(Scalar::text).toList();
        return Links.of(
                lesson.address(),
                lessons.stream()
                        .filter(each -> keys.contains(each.key()))
                        .map(each -> new Place(Site.numbered(each), each.address()))
                        .toList());
    }

    private static Links contents(List<Heading> headings) {
        List<Link> links = new ArrayList<>();
        for (Heading heading : headings) {
            if (heading.level() == 2) {
                links.add(new Link(heading.text(), "#" + heading.id(), false));
            }
        }
        return links.isEmpty() ? null : new Links(links);
    }

    private Link neighbour(String from, int at) {
        if (at < 0 || at >= lessons.size()) {
            return null;
        }
        Lesson lesson = lessons.get(at);
        return new Link(Site.numbered(lesson), Address.from(from, lesson.address()), true);
    }
}
