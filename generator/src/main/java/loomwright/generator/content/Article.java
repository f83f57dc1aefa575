package loomwright.generator.content;

import java.util.List;
import loomwright.generator.problem.SourceFile;
import loomwright.generator.problem.Span;

/**
 * A Markdown file that becomes one page.
 *
 * @param address the page, from the root of the site: {@code lessons/08-voltage-drop.html}
 * @param title its title
 * @param file the file
 * @param body the Markdown below the front matter
 * @param blocks the fenced blocks of ours in it, in order
 */
public record Article(String address, String title, SourceFile file, Span body, List<Block> blocks) {}
