package loomwright.generator.content;

import java.util.Set;
import java.util.regex.Pattern;
import loomwright.generator.problem.Span;

/** Counts the words that a reader of a text reads. */
public final class Words {
    /** What stands in a figure, a table or a question besides words to read, is told by its keys. */
    private static final Set<String> READ = Set.of("title", "caption", "ask", "answer", "because");

    private static final Pattern ADDRESS = Pattern.compile("\\]\\([^)\\s]{0,300}\\)");
    private static final Pattern VALUE = Pattern.compile("\\{\\{[^}\\s]{0,300}}}");

    private Words() {}

    /** How many words a line of text has; a value counts as one, an address of a link not at all. */
    public static int in(String text) {
        String read = text;
        if (text.indexOf('(') >= 0 || text.indexOf('{') >= 0) {
            read = VALUE.matcher(ADDRESS.matcher(text).replaceAll("]")).replaceAll("value");
        }
        int words = 0;
        boolean inside = false;
        for (int i = 0; i < read.length(); i++) {
            char sign = read.charAt(i);
            boolean space = Character.isWhitespace(sign) || sign == '\u00a0' || sign == '\u202f';
            if (!space && !inside && Character.isLetterOrDigit(sign)) {
                words++;
                inside = true;
            } else if (space) {
                inside = false;
            }
        }
        return words;
    }

    /** The words of a text without those of its blocks, and of each block what is read in any case: all but worked examples and formulas. */
    static int of(Article article) {
        int words = 0;
        int from = article.body().start();
        String text = article.file().text();
        for (Block block : article.blocks()) {
            words += in(text.substring(from, block.info().start())) + of(block);
            from = block.body().end();
        }
        return words + in(text.substring(Math.min(from, article.body().end()), article.body().end()));
    }

    private static int of(Block block) {
        return switch (block.kind()) {
            case "caution", "task" -> in(block.title()) + in(block.body().text());
            case "figure", "table", "question" -> ofKeys(block.body());
            default -> 0;
        };
    }

    private static int ofKeys(Span body) {
        int words = 0;
        boolean read = false;
        for (String line : body.text().lines().toList()) {
            int colon = line.indexOf(':');
            String rest = line;
            if (colon > 0 && Character.isLetter(line.charAt(0))) {
                read = READ.contains(line.substring(0, colon));
                rest = line.substring(colon + 1);
            }
            words += read ? in(rest) : 0;
        }
        return words;
    }
}
