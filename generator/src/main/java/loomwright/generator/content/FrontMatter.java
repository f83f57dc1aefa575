package loomwright.generator.content;

import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.generator.problem.Span;

/**
 * The lines between two {@code ---} at the top of a Markdown file.
 *
 * @param map what they say, or null if they cannot be read
 * @param bodyStart where the Markdown begins
 */
record FrontMatter(YamlMap map, int bodyStart) {
    private static final String FENCE = "---";

    static FrontMatter of(SourceFile file, String what, Problems problems) {
        if (!file.line(1).stripTrailing().equals(FENCE)) {
            problems.add(file.lineSpan(1).problem(
                    "the file does not begin with front matter", "Begin it with a line ---, lines such as title: text, and a line ---."));
            return new FrontMatter(null, 0);
        }
        int last = file.lineAt(file.text().length());
        for (int line = 2; line <= last; line++) {
            if (file.line(line).stripTrailing().equals(FENCE)) {
                Span body = file.span(file.lineStart(2), file.lineStart(line));
                return new FrontMatter(YamlReader.read(what, body, problems), file.lineStart(line + 1));
            }
        }
        problems.add(file.lineSpan(1).problem("the front matter is not closed", "Add a line --- after it."));
        return new FrontMatter(null, file.text().length());
    }
}
