package loomwright.plan;

import loomwright.markup.Words;

/**
 * A careful value that stands for an answer that was left open.
 *
 * @param item the thing, counted from 0, or {@link Answers#JOB}
 * @param fieldKey the question
 * @param words what was taken, in a sentence
 * @param standing how far it can be trusted: common practice, invented, published
 */
public record Taken(int item, String fieldKey, String words, String standing) {
    /** The same, with the thing it is about, where there are several. */
    Taken of(Answers answers) {
        boolean several = item >= 0 && answers.items().size() > 1;
        return several ? new Taken(
                item, fieldKey, "Thing " + (item + 1) + ", " + answers.items().get(item).option("kind").label() + ": " + Words.small(words), standing) : this;
    }
}
