package loomwright.generator.example;

import loomwright.generator.content.Scalar;
import loomwright.source.Source;

/**
 * A wrong figure in print, given to the reader to find.
 *
 * @param resultLabel what it is a figure of
 * @param printed the wrong figure as printed
 * @param source where it is printed
 * @param explain what went wrong, in Markdown
 */
public record Misprint(String resultLabel, String printed, Source source, Scalar explain) {}
