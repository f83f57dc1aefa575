package loomwright.generator.content;

/**
 * A figure of the scenario.
 *
 * @param value the figure as written, such as {@code 4.2 m}
 * @param says what it is
 */
public record Fact(String value, String says) {}
