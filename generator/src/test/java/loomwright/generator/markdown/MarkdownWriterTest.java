package loomwright.generator.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loomwright.generator.content.Scalar;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.generator.problem.Span;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MarkdownWriterTest {
    /** Text without links or values needs nothing from the site. */
    private static final Surroundings NOTHING = new Surroundings() {
        @Override
        public String value(String name, Span place, boolean linked) {
            throw new AssertionError(name);
        }

        @Override
        public Target link(String address, Span place) {
            throw new AssertionError(address);
        }

        @Override
        public String block(Span info) {
            return null;
        }

        @Override
        public String headingId(String heading, Span place) {
            return heading;
        }
    };

    /** A sentence takes a shorter way than a file; both must give the same. */
    @ParameterizedTest
    @ValueSource(strings = {
        "One sentence.",
        "Volts & \"amperes\" < 3",
        "Is it 2.5 mm²? It's \"so\" - or +so, 1) or 1. and #4!",
        "Ends in spaces   ",
        "Words *stressed* and `code`",
        "1. a list",
        "- a list",
        "# a heading",
        "two\n\nparagraphs",
        "a\\*b",
        "| a | b |\n| - | - |\n| 1 | 2 |",
        "A | B\n--|--\n1 | 2",
        "Title\n=====",
        ""
    })
    void givesTheSameForATextAndForAFile(String text) {
        Problems problems = new Problems();
        SourceFile file = new SourceFile("a.md", text);
        Span whole = file.span(0, text.length());
        MarkdownWriter writer = new MarkdownWriter(NOTHING, problems);
        assertEquals(new WholeFile(text).html(), writer.write(new Scalar(text, whole)));
        assertEquals(new WholeFile(text).html(), writer.write(whole).html());
    }

    /** On a phone "20" would end a line and "°C" begin the next. A word that only begins like a unit is none. */
    @ParameterizedTest
    @CsvSource({
        "At 20 °C it is 2.5 mm² and 10 % of 12 V, At 20_°C it is 2.5_mm² and 10_% of 12_V",
        "*5 mΩ* or 12 AWG or 6 N m, *5_mΩ* or 12_AWG or 6_N_m",
        "4 hours and 12 Volvos and 3 more, 4 hours and 12 Volvos and 3 more"
    })
    void aNumberStaysOnTheLineOfItsUnit(String text, String kept) {
        SourceFile file = new SourceFile("a.md", text);
        String html = new MarkdownWriter(NOTHING, new Problems()).write(new Scalar(text, file.span(0, text.length())));
        assertEquals("<p>" + kept.replace('_', '\u00a0').replaceAll("\\*(.*)\\*", "<em>$1</em>") + "</p>\n", html);
    }

    /** Always the long way, with tables: a sign that no shortcut knows is put in front and taken away again. */
    private record WholeFile(String text) {
        String html() {
            String marked = text + "\n\n|";
            SourceFile file = new SourceFile("a.md", marked);
            String html = new MarkdownWriter(NOTHING, new Problems()).write(file.span(0, marked.length())).html();
            return html.substring(0, html.length() - "<p>|</p>\n".length());
        }
    }
}
