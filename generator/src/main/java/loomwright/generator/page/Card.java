package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.generator.content.Lesson;
import loomwright.generator.content.Scalar;
import loomwright.generator.markdown.Heading;

/**
 * What to keep of a lesson, as the templates read it.
 *
 * @param id its place in the page
 * @param title its heading
 * @param lesson whose it is; stands on the card that is printed alone
 * @param lines what to keep, a line each, as HTML
 */
record Card(String id, String title, String lesson, List<String> lines) {
    private static final String TITLE = "In short";

    /** The card of a lesson, or null if it has none. */
    static Card of(Lesson lesson, ArticleWriter writer) {
        if (lesson.card().isEmpty()) {
            return null;
        }
        List<String> lines = new ArrayList<>();
        for (Scalar line : lesson.card()) {
            lines.add(writer.inLine(line));
        }
        String id = writer.headingId(TITLE, lesson.card().get(0).at());
        return new Card(id, TITLE, ("Lesson " + Site.numbered(lesson)).strip(), lines);
    }

    Heading heading() {
        return new Heading(2, id, title);
    }
}
