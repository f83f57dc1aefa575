package loomwright.plan;

/**
 * A careful value that stands for an answer that was left open.
 *
 * @param item the thing, counted from 0, or {@link Answers#JOB}
 * @param fieldKey the question
 * @param words what was taken, in a sentence
 * @param standing how far it can be trusted: common practice, invented, published
 */
public record Taken(int item, String fieldKey, String words, String standing) {}
