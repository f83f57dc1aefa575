package loomwright.generator.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.generator.problem.Span;

/** Finds the fenced blocks of a Markdown file without parsing the rest of it, by the fence rules of CommonMark. */
final class Fences {
    private static final Set<String> CODE = Set.of("", "text", "markdown", "yaml", "csv", "sh", "java", "json", "svg");

    /** The blocks of text that begin with a line for their title. */
    private static final Set<String> TITLED = Set.of("caution", "task");

    private static final String TITLE = "title:";

    private final SourceFile file;
    private final Problems problems;
    private final List<Block> blocks = new ArrayList<>();

    private char mark;
    private int length;
    private int infoStart;
    private int infoEnd;
    private int bodyStart;
    private int firstUnclosed = -1;

    private Fences(SourceFile file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    /**
     * What there is in a text.
     *
     * @param blocks the blocks of ours
     * @param end where the text ends, or where a block begins that is not closed: what follows it cannot be told apart
     */
    record Found(List<Block> blocks, int end) {}

    /** Looks through a text. */
    static Found of(Span text, Problems problems) {
        Fences fences = new Fences(text.file(), problems);
        fences.scan(text.start(), text.end());
        return new Found(List.copyOf(fences.blocks), fences.firstUnclosed < 0 ? text.end() : fences.firstUnclosed);
    }

    private void scan(int start, int end) {
        String text = file.text();
        boolean inside = false;
        int from = start;
        while (from < end) {
            int lineFeed = text.indexOf('\n', from);
            int stop = lineFeed < 0 || lineFeed > end ? end : lineFeed;
            int run = indented(text, from, stop);
            if (inside && run >= 0 && cutShort(text, run, stop)) {
                unclosed("Add a line of " + fence() + " before line " + file.lineAt(from) + ", where the next block begins.");
                add(cut(from));
                inside = false;
            }
            if (!inside && run >= 0 && opens(text, run, stop)) {
                inside = true;
                bodyStart = Math.min(stop + 1, end);
            } else if (inside && run >= 0 && closes(text, run, stop)) {
                inside = false;
                add(from);
            }
            from = stop + 1;
        }
        if (inside) {
            unclosed("Add a line of " + fence() + " after it.");
            add(cut(end));
        }
    }

    /** Whether a block of ours is open and this line opens another with the same fence: then its own end was forgotten. */
    private boolean cutShort(String text, int run, int stop) {
        int end = endOfRun(text, run, stop);
        return Block.KINDS.contains(kind(infoStart, infoEnd))
                && text.charAt(run) == mark
                && end - run >= length
                && Block.KINDS.contains(kind(end, stop));
    }

    /** Where the lines of an open block of keys seem to end: at a blank line that no key follows. What comes then is no second mistake of its author. */
    private int cut(int end) {
        String kind = kind(infoStart, infoEnd);
        if (!Block.KINDS.contains(kind) || TITLED.contains(kind)) {
            return end;
        }
        String text = file.text();
        for (int blank = text.indexOf("\n\n", bodyStart); blank >= 0 && blank + 2 < end; blank = text.indexOf("\n\n", blank + 1)) {
            int stop = text.indexOf('\n', blank + 2);
            String next = text.substring(blank + 2, stop < 0 || stop > end ? end : stop);
            boolean more = next.isBlank() || next.startsWith(" ") || next.startsWith("- ") || next.matches("[a-z][a-z-]*:( .*)?");
            if (!more) {
                return blank + 1;
            }
        }
        return end;
    }

    private void unclosed(String remedy) {
        String kind = kind(infoStart, infoEnd);
        Span info = file.span(infoStart, infoEnd);
        problems.add((kind.isEmpty() ? file.lineSpan(info.line()) : info.find(kind))
                .problem(kind.isEmpty() ? "this block is not closed" : "the block \"" + kind + "\" is not closed", remedy));
        firstUnclosed = firstUnclosed < 0 ? file.lineStart(info.line()) : firstUnclosed;
    }

    private String kind(int from, int to) {
        return file.text().substring(from, to).strip().split(" ", 2)[0];
    }

    private String fence() {
        return String.valueOf(mark).repeat(length);
    }

    /** Where the text of the line begins, or -1 if it is indented too far for a fence or empty. */
    private static int indented(String text, int from, int stop) {
        int at = from;
        while (at < stop && text.charAt(at) == ' ') {
            at++;
        }
        return at - from > 3 || at == stop ? -1 : at;
    }

    private boolean opens(String text, int run, int stop) {
        char c = text.charAt(run);
        int end = endOfRun(text, run, stop);
        if ((c != '`' && c != '~') || end - run < 3 || (c == '`' && text.substring(end, stop).indexOf('`') >= 0)) {
            return false;
        }
        mark = c;
        length = end - run;
        infoStart = end;
        infoEnd = stop;
        return true;
    }

    private boolean closes(String text, int run, int stop) {
        int end = endOfRun(text, run, stop);
        return text.charAt(run) == mark && end - run >= length && text.substring(end, stop).isBlank();
    }

    private static int endOfRun(String text, int run, int stop) {
        int end = run;
        while (end < stop && text.charAt(end) == text.charAt(run)) {
            end++;
        }
        return end;
    }

    private void add(int bodyEnd) {
        String words = file.text().substring(infoStart, infoEnd).strip();
        int space = words.indexOf(' ');
        String kind = space < 0 ? words : words.substring(0, space);
        int wordsStart = file.text().indexOf(words, infoStart);
        Span info = file.span(wordsStart, wordsStart + words.length());
        if (Block.KINDS.contains(kind)) {
            if (space >= 0) {
                problems.add(info.find(words.substring(space).strip()).problem(
                        "words stand beside \"" + kind + "\"", "Only the word of the block stands there; a title is its first line: title: ..."));
            }
            int titleEnd = TITLED.contains(kind) ? titleEnd(bodyEnd) : -1;
            String title = titleEnd < 0 ? "" : file.text().substring(bodyStart + TITLE.length(), titleEnd).strip();
            blocks.add(new Block(kind, title, info, file.span(titleEnd < 0 ? bodyStart : Math.min(titleEnd + 1, bodyEnd), bodyEnd)));
        } else if (!CODE.contains(kind)) {
            problems.add(info.problem("no block is called \"" + kind + "\"", remedy(kind)));
        }
    }

    /** The end of the first line of the block that is open, if that line is its title, or -1. */
    private int titleEnd(int bodyEnd) {
        int lineFeed = file.text().indexOf('\n', bodyStart);
        return file.text().startsWith(TITLE, bodyStart) && bodyStart < bodyEnd ? (lineFeed < 0 || lineFeed > bodyEnd ? bodyEnd : lineFeed) : -1;
    }

    private static String remedy(String kind) {
        List<String> known = new ArrayList<>(Block.KINDS);
        known.addAll(CODE);
        known.remove("");
        known.sort(null);
        return Nearest.remedy(kind, known);
    }
}
