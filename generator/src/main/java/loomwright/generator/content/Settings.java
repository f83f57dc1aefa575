package loomwright.generator.content;

/**
 * What stands at the foot of every page.
 *
 * @param revised the date of the text
 * @param licence one sentence
 * @param safety the page that says what can hurt, as a link address, or null
 */
public record Settings(String revised, String licence, Scalar safety) {}
