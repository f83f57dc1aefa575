package loomwright.generator.markdown;

/**
 * A heading of a page.
 *
 * @param level 2 to 6
 * @param id its anchor
 * @param text its words
 */
public record Heading(int level, String id, String text) {}
