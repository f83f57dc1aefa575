package loomwright.generator.content;

/**
 * A page of plain text from {@code pages/}.
 *
 * @param key its file name without the ending
 * @param article its text
 * @param summary one sentence for lists and search
 */
public record PlainPage(String key, Article article, String summary) {}
