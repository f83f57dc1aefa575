package loomwright.generator.content;

import java.util.List;

/**
 * A lesson.
 *
 * @param key its folder, such as {@code 08-voltage-drop}
 * @param article its text
 * @param goal what the reader can do afterwards; completes "You can ..."
 * @param card what to keep of it, a line each; it stands at its end and is printed as a card
 * @param words how many words its text has, without its worked examples
 * @param summary one sentence for lists and search
 * @param needs the lessons to read before
 */
public record Lesson(String key, Article article, String goal, List<Scalar> card, int words, String summary, List<Scalar> needs) {

    /** Its key without the number in front, so that a link outlives a new number. */
    public String name() {
        int start = number().isEmpty() ? 0 : key.indexOf('-') + 1;
        return key.substring(start);
    }

    /** The number at the start of its key, without zeros in front, or an empty text. A lesson put in between has a letter: 5b. */
    public String number() {
        int end = 0;
        while (end < key.length() && Character.isDigit(key.charAt(end))) {
            end++;
        }
        boolean between = end > 0 && end + 1 < key.length() && Character.isLowerCase(key.charAt(end)) && key.charAt(end + 1) == '-';
        return end == 0 ? "" : Integer.parseInt(key.substring(0, end)) + (between ? key.substring(end, end + 1) : "");
    }

    public String title() {
        return article.title();
    }

    public String address() {
        return article.address();
    }
}
