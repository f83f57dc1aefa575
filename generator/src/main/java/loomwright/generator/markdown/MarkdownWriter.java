package loomwright.generator.markdown;

import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Document;
import java.util.List;
import loomwright.generator.content.Scalar;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.generator.problem.Span;
import loomwright.markup.Html;

/** Turns the Markdown of one page into HTML. */
public final class MarkdownWriter {
    private static final Parser WITH_TABLES = parser(List.of(TablesExtension.create()));

    /** Setting up for tables costs more than parsing a sentence, and the texts of blocks are mostly a sentence. */
    private static final Parser WITHOUT_TABLES = parser(List.of());

    /** Signs that mean something to Markdown inside a line, or end it. */
    private static final String SIGNS = "\\`*_{[<&|\n";

    private static final String OPEN = "<p>";
    private static final String CLOSE = "</p>\n";

    private final Surroundings surroundings;
    private final Problems problems;

    public MarkdownWriter(Surroundings surroundings, Problems problems) {
        this.surroundings = surroundings;
        this.problems = problems;
    }

    private static Parser parser(List<TablesExtension> extensions) {
        return Parser.builder()
                .extensions(extensions)
                .customInlineParserExtensionFactory(new ValueNameParser.Factory())
                .build();
    }

    /** A stretch of a file. */
    public Markup write(Span text) {
        SourceFile file = text.file();
        int base = text.start();
        return write(text.text(), (start, end) -> file.span(base + start, base + end));
    }

    /** A stretch of a file, piece by piece. */
    public List<Part> parts(Span text) {
        SourceFile file = text.file();
        int base = text.start();
        Origin origin = (start, end) -> file.span(base + start, base + end);
        return new NodeWriter(origin, surroundings, problems).parts(parsed(text.text(), origin));
    }

    /** A text from a YAML value. Its problems are placed by looking for their words inside the value. */
    public String write(Scalar text) {
        String words = text.text();
        if (isPlain(words)) {
            return OPEN + Html.escape(Together.kept(words.stripTrailing())) + CLOSE;
        }
        return write(words, (start, end) -> text.at().find(words.substring(start, end))).html();
    }

    /** A text from a YAML value that stands inside a line: without paragraphs around it. */
    public String inLine(Scalar text) {
        String html = write(text);
        boolean single = html.startsWith(OPEN) && html.indexOf(OPEN, 1) < 0 && html.endsWith(CLOSE);
        return single ? html.substring(OPEN.length(), html.length() - CLOSE.length()) : html;
    }

    /** Whether a text is one line of words and nothing else, so that it need not be parsed. */
    private static boolean isPlain(String text) {
        boolean plain = !text.isEmpty() && Character.isLetter(text.charAt(0));
        for (int i = 0; i < text.length() && plain; i++) {
            plain = SIGNS.indexOf(text.charAt(i)) < 0;
        }
        return plain;
    }

    private Markup write(String text, Origin origin) {
        NodeWriter writer = new NodeWriter(origin, surroundings, problems);
        writer.children(parsed(text, origin));
        return new Markup(writer.html(), List.copyOf(writer.headings()));
    }

    private Document parsed(String text, Origin origin) {
        Parser parser = text.indexOf('|') < 0 ? WITHOUT_TABLES : WITH_TABLES;
        return new Limits(origin, problems).tree(text, parser::parse);
    }
}
