package loomwright.plan;

/**
 * Why there is no circuit for these answers.
 *
 * @param item the thing whose answer stands in the way, counted from 0, or {@link Answers#JOB}
 * @param fieldKey the question whose answer stands in the way
 * @param words what stands in the way, in a sentence
 * @param help what would help, in a sentence
 */
public record Obstacle(int item, String fieldKey, String words, String help) {}
