package loomwright.generator.markdown;

import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.parser.Parser;
import java.util.List;
import loomwright.generator.content.Scalar;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.generator.problem.Span;

/** Turns the Markdown of one page into HTML. */
public final class MarkdownWriter {
    private static final Parser PARSER = Parser.builder()
            .extensions(List.of(TablesExtension.create()))
            .customInlineParserExtensionFactory(new ValueNameParser.Factory())
            .build();

    private static final String OPEN = "<p>";
    private static final String CLOSE = "</p>\n";

    private final Surroundings surroundings;
    private final Problems problems;

    public MarkdownWriter(Surroundings surroundings, Problems problems) {
        this.surroundings = surroundings;
        this.problems = problems;
    }

    /** A stretch of a file. */
    public Markup write(Span text) {
        SourceFile file = text.file();
        int base = text.start();
        return write(text.text(), (start, end) -> file.span(base + start, base + end));
    }

    /** A text from a YAML value. Its problems are placed by looking for their words inside the value. */
    public String write(Scalar text) {
        String words = text.text();
        return write(words, (start, end) -> text.at().find(words.substring(start, end))).html();
    }

    /** A text from a YAML value that stands inside a line: without paragraphs around it. */
    public String inLine(Scalar text) {
        String html = write(text);
        boolean single = html.startsWith(OPEN) && html.indexOf(OPEN, 1) < 0 && html.endsWith(CLOSE);
        return single ? html.substring(OPEN.length(), html.length() - CLOSE.length()) : html;
    }

    private Markup write(String text, Origin origin) {
        NodeWriter writer = new NodeWriter(origin, surroundings, problems);
        writer.children(PARSER.parse(text));
        return new Markup(writer.html(), List.copyOf(writer.headings()));
    }
}
