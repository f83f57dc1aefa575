package loomwright.generator.page;

import java.util.List;
import loomwright.generator.content.Lesson;

/** Fills the projector view of a lesson: the same content, screen by screen. */
final class ProjectorPage {
    /** The record of projector.mustache. */
    record Page(Frame frame, String number, String title, String goal, int minutes, String lesson, int count, List<Screen> screens, List<Jump> outline, Card card) {}

    private ProjectorPage() {}

    static LessonPages.Projected of(Site site, Lesson lesson, Frames frames, Templates templates) {
        String address = Address.projector(lesson.key());
        ProjectorWriter writer = new ProjectorWriter(site.apart(), lesson);
        List<Screen> screens = writer.write();
        Page page = new Page(
                frames.of(lesson.title() + ", on the projector", lesson.summary(), address),
                lesson.number(),
                lesson.title(),
                lesson.goal(),
                LessonTime.minutes(lesson, site.book()),
                Address.from(address, lesson.address()),
                writer.count(),
                screens,
                writer.outline(),
                writer.card());
        return new LessonPages.Projected(templates.fill("projector", page), writer.places());
    }
}
