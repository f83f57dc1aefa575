package loomwright.generator.markdown;

import java.util.List;

/**
 * A text as HTML.
 *
 * @param html the HTML
 * @param headings its headings, in order
 */
public record Markup(String html, List<Heading> headings) {}
