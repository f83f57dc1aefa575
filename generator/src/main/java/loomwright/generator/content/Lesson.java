package loomwright.generator.content;

import java.util.List;

/**
 * A lesson.
 *
 * @param key its folder, such as {@code 08-voltage-drop}
 * @param article its text
 * @param goal what the reader can do afterwards; completes "You can ..."
 * @param minutes how long it takes
 * @param summary one sentence for lists and search
 * @param needs the lessons to read before
 */
public record Lesson(String key, Article article, String goal, int minutes, String summary, List<Scalar> needs) {

    public String title() {
        return article.title();
    }

    public String address() {
        return article.address();
    }
}
