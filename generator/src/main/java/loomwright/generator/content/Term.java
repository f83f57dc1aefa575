package loomwright.generator.content;

import loomwright.generator.problem.Span;

/**
 * A word of the trade with its meaning.
 *
 * @param key its anchor in the glossary
 * @param words the word
 * @param meaning the Markdown below its heading
 */
public record Term(String key, String words, Span meaning) {}
