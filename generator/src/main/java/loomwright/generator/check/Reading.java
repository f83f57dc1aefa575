package loomwright.generator.check;

import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeVisitor;

/**
 * How long a lesson is and how easily it reads.
 *
 * <p>Counted is what its author wrote: text, stories, captions, tasks, questions and answers; not what calculators write, nor tables. The
 * ease is that of Rudolf Flesch: 206.835 − 1.015 × words a sentence − 84.6 × syllables a word. Syllables are counted by the groups of
 * vowels, which is right within a few percent over a page of English. 60 to 70 is plain English, 80 and more is easy.
 *
 * @param words how many words it has
 * @param ease its reading ease
 */
public record Reading(int words, double ease) {
    private static final String NOT_WRITTEN =
            "nav, .top, .goal, .card, .past, .shows, .unseen, .facts, .actions, .contents, .onward, .next, .given, .outcome, .pins, svg, table, .figures, .graph, .formula, .label, .source, .circuit-sheet, script";
    private static final String PIECES = "p, li, h1, h2, h3, h4, figcaption, summary, div, section";

    /** The reading of a finished page of a lesson. */
    public static Reading of(String html) {
        Element main = Jsoup.parse(html).selectFirst("main");
        main.select(NOT_WRITTEN).remove();
        return ofPieces(pieces(main));
    }

    /** The reading of pieces of text; a piece ends a sentence. */
    static Reading ofPieces(List<String> pieces) {
        int words = 0;
        int sentences = 0;
        int syllables = 0;
        for (String piece : pieces) {
            boolean open = false;
            for (String token : piece.strip().split("[\\s\\u00a0\\u2011\\u2013-]+")) {
                String word = token.replaceAll("[^\\p{L}\\p{N}']", "");
                if (!word.isEmpty()) {
                    words++;
                    syllables += Syllables.of(word);
                    open = true;
                }
                if (open && token.matches(".*[.!?][)\"\\u201d']*")) {
                    sentences++;
                    open = false;
                }
            }
            sentences += open ? 1 : 0;
        }
        double ease = words == 0 ? 0 : 206.835 - 1.015 * words / sentences - 84.6 * syllables / words;
        return new Reading(words, ease);
    }

    /** The text, piece by piece, as the blocks of the page part it. */
    private static List<String> pieces(Element main) {
        List<String> pieces = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        main.traverse(new NodeVisitor() {
            @Override
            public void head(org.jsoup.nodes.Node node, int depth) {
                if (node instanceof TextNode text) {
                    piece.append(text.text());
                } else if (node instanceof Element element && element.is(PIECES)) {
                    end();
                }
            }

            @Override
            public void tail(org.jsoup.nodes.Node node, int depth) {
                if (node instanceof Element element && element.is(PIECES)) {
                    end();
                }
            }

            private void end() {
                if (!piece.toString().isBlank()) {
                    pieces.add(piece.toString());
                }
                piece.setLength(0);
            }
        });
        return pieces;
    }
}
