package loomwright.generator.content;

import loomwright.generator.problem.Problem;
import loomwright.generator.problem.Span;

/**
 * A text from a YAML value, and where it stands.
 *
 * @param text the text, quotes and folding undone
 * @param at its place in the file
 */
public record Scalar(String text, Span at) {

    public boolean isBlank() {
        return text.isBlank();
    }

    public Problem problem(String words, String remedy) {
        return at.problem(words, remedy);
    }
}
