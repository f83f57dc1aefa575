package loomwright.generator.example;

/**
 * A value put into the text.
 *
 * @param text the value with its unit
 * @param example the example it comes from, or null
 */
public record Shown(String text, Example example) {}
