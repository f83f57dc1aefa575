package loomwright.generator.problem;

import java.util.Comparator;

/**
 * One mistake of an author.
 *
 * @param file the file as its path was given
 * @param line the line, counted from 1; 0 if it is about the file as a whole
 * @param column the column, counted from 1
 * @param words what is wrong, with the words from the file, without a full stop
 * @param remedy what to do, in full sentences
 * @param excerpt the line itself; empty if there is none
 */
public record Problem(String file, int line, int column, String words, String remedy, String excerpt)
        implements Comparable<Problem> {
    private static final Comparator<Problem> ORDER = Comparator.comparing(Problem::file)
            .thenComparing(Problem::line)
            .thenComparing(Problem::column)
            .thenComparing(Problem::words)
            .thenComparing(Problem::remedy);

    /** Longer lines are cut to a stretch around the place. */
    private static final int WIDEST = 110;

    private static final int BEFORE = 60;
    /** What the name of a finished page begins with. */
    public static final String PAGE = "page ";
    private static final String INDENT = "   ";

    /** Texts that come from the calculators are set for the page; on the command line plain signs are easier to search for. */
    public Problem {
        file = HiddenSigns.shown(file).replace('\n', '\uFFFD');
        excerpt = HiddenSigns.shown(excerpt);
        words = plain(words);
        remedy = plain(remedy);
    }

    /** A problem with a file as a whole. */
    public static Problem ofFile(String file, String words, String remedy) {
        return new Problem(file, 0, 0, words, remedy, "");
    }

    /** A problem of a finished page that could be led back to no line of an author. */
    public static Problem ofPage(String address, int line, int column, String words, String remedy, String excerpt) {
        return new Problem(PAGE + address, line, column, words, remedy, excerpt);
    }

    boolean isOfPage() {
        return file.startsWith(PAGE);
    }

    private static String plain(String text) {
        return HiddenSigns.shown(text).replace('\u201c', '"').replace('\u201d', '"').replace('\u00a0', ' ').replace('\u2009', ' ');
    }

    @Override
    public int compareTo(Problem other) {
        return ORDER.compare(this, other);
    }

    /** The message as it is printed, with the line and a caret below it. */
    public String text() {
        String place = line == 0 ? file : file + ":" + line + ":" + column;
        String message = place + ": " + words + ". " + remedy;
        return line == 0 || excerpt.isBlank() ? message : message + "\n" + pointed();
    }

    private String pointed() {
        String shown = excerpt.replace('\t', ' ');
        int at = Math.min(column - 1, shown.length());
        if (shown.length() > WIDEST) {
            int from = Math.max(0, Math.min(at - BEFORE, shown.length() - WIDEST));
            int end = Math.min(shown.length(), from + WIDEST);
            shown = (from > 0 ? "…" : "") + shown.substring(from, end) + (end < shown.length() ? "…" : "");
            at = at - from + (from > 0 ? 1 : 0);
        }
        return INDENT + shown.stripTrailing() + "\n" + INDENT + " ".repeat(at) + "^";
    }
}
