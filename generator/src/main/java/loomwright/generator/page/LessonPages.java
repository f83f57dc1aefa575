package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import loomwright.generator.content.Lesson;
import loomwright.generator.content.Scalar;
import loomwright.generator.markdown.Heading;
import loomwright.generator.markdown.Markup;
import loomwright.generator.problem.Places;

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
            String projector,
            String body,
            Card card,
            Link previous,
            Link next) {}

    /** A lesson as a page, with what it adds to other pages. */
    record Written(Lesson lesson, String html, Places places, Reliance reliance, List<Section> sections, Projected projected) {}

    /** The projector view of it. */
    record Projected(String html, Places places) {}

    private static final int AT_A_TIME = 32;

    private final Site site;
    private final Frames frames;
    private final Templates templates;
    private final SearchData search;
    private final LessonMemory memory;
    private final List<Lesson> lessons;

    LessonPages(Site site, Frames frames, Templates templates, SearchData search, LessonMemory memory) {
        this.site = site;
        this.frames = frames;
        this.templates = templates;
        this.search = search;
        this.memory = memory;
        this.lessons = site.content().lessons();
    }

    /** Writes some lessons at a time, side by side, and hands them on in their order: the site is the same every time. */
    void write(PageSink sink) {
        for (int from = 0; from < lessons.size(); from += AT_A_TIME) {
            int end = Math.min(lessons.size(), from + AT_A_TIME);
            List<Written> written = IntStream.range(from, end).parallel().mapToObj(this::written).toList();
            written.forEach(each -> handOn(each, sink));
        }
    }

    private Written written(int at) {
        Written before = memory.find(lessons.get(at));
        return before == null ? write(at) : before;
    }

    private Written write(int at) {
        Lesson lesson = lessons.get(at);
        String address = lesson.address();
        Site apart = site.apart();
        ArticleWriter writer = ArticleWriter.of(apart, Site.numbered(lesson), lesson.article());
        Markup markup = writer.write(lesson.article().body());
        Card card = Card.of(lesson, writer);
        Page page = new Page(
                frames.of(lesson.title(), lesson.summary(), address),
                lesson.number(),
                lesson.title(),
                lesson.goal(),
                LessonTime.minutes(lesson, site.book()),
                needs(lesson),
                contents(markup.headings(), card),
                Address.from(address, Address.projector(lesson.key())),
                markup.html(),
                card,
                neighbour(address, at - 1),
                neighbour(address, at + 1));
        return new Written(
                lesson, templates.fill("lesson", page), writer.places(), apart.reliance(), Section.of(markup),
                ProjectorPage.of(apart, lesson, frames, templates));
    }

    private void handOn(Written written, PageSink sink) {
        Lesson lesson = written.lesson();
        memory.keep(written, site.problems());
        sink.page(lesson.address(), written.html(), written.places());
        sink.page(Address.projector(lesson.key()), written.projected().html(), written.projected().places());
        site.reliance().add(written.reliance());
        String title = Site.numbered(lesson);
        search.add(title, lesson.address(), "lesson", lesson.summary(), written.sections().get(0).words());
        for (Section section : written.sections().subList(1, written.sections().size())) {
            search.addSection(title + ": " + section.title(), lesson.address() + "#" + section.id(), "lesson", section.opening(), section.words());
        }
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

    private static Links contents(List<Heading> headings, Card card) {
        List<Link> links = new ArrayList<>();
        List<Heading> all = new ArrayList<>(headings);
        if (card != null) {
            all.add(card.heading());
        }
        for (Heading heading : all) {
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
