package loomwright.generator.markdown;

import loomwright.generator.problem.Span;

/**
 * A piece of a text that can be shown by itself: a paragraph, an item of a list, a heading, a table, a fenced block.
 *
 * @param open what must stand before it, such as the start of a list, or an empty text
 * @param html the piece
 * @param close what must stand after it, or an empty text
 * @param heading the heading it is, or null
 * @param fence the words after the fence, if it is a fenced block, or null
 */
public record Part(String open, String html, String close, Heading heading, Span fence) {}
