package loomwright.generator.content;

import java.util.Set;
import loomwright.generator.problem.Span;

/**
 * A fenced block of ours.
 *
 * @param kind the word after the fence, such as {@code example}
 * @param title the title of a caution or a task, from its first line, or an empty text
 * @param info the place of the kind
 * @param body the lines between the fences, without that of the title
 */
public record Block(String kind, String title, Span info, Span body) {
    /** The kinds there are. */
    public static final Set<String> KINDS = Set.of("example", "caution", "task", "figure", "formula", "question", "table", "circuit");
}
