package loomwright.generator.content;

import java.util.Set;
import loomwright.generator.problem.Span;

/**
 * A fenced block of ours.
 *
 * @param kind the first word after the fence, such as {@code example}
 * @param title the words after it, or an empty text
 * @param info the place of both
 * @param body the lines between the fences
 */
public record Block(String kind, String title, Span info, Span body) {
    /** The kinds there are. */
    public static final Set<String> KINDS = Set.of("example", "caution", "task", "figure", "formula", "question", "table", "circuit");
}
