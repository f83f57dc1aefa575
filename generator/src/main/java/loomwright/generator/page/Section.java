package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.generator.markdown.Heading;
import loomwright.generator.markdown.Markup;
import loomwright.generator.markdown.PlainText;

/**
 * What stands under one heading of a lesson, as search reads it.
 *
 * @param title the heading; empty for what stands before the first
 * @param id the heading's anchor; empty for what stands before the first
 * @param words the text, with the heading
 */
record Section(String title, String id, String words) {
    private static final int OPENING = 140;

    /** The sections of a lesson, that before the first heading first. */
    static List<Section> of(Markup markup) {
        List<Section> sections = new ArrayList<>();
        String title = "";
        String id = "";
        int from = 0;
        for (Heading heading : markup.headings()) {
            int at = heading.level() == 2 ? markup.html().indexOf("<h2 id=\"" + heading.id() + "\"", from) : -1;
            if (at >= 0) {
                sections.add(new Section(title, id, PlainText.of(markup.html().substring(from, at))));
                title = heading.text();
                id = heading.id();
                from = at;
            }
        }
        sections.add(new Section(title, id, PlainText.of(markup.html().substring(from))));
        return List.copyOf(sections);
    }

    /** The beginning of its text, up to the end of a word. */
    String opening() {
        String text = words.startsWith(title) ? words.substring(title.length()).strip() : words;
        return text.length() <= OPENING ? text : text.substring(0, text.lastIndexOf(' ', OPENING)) + " \u2026";
    }
}
