package loomwright.generator.problem;

import java.util.Arrays;

/** The text of an author's file, and the lines in it. Line ends are single line feeds. */
public final class SourceFile {
    private final String name;
    private final String text;
    private final int[] lineStarts;

    /**
     * A file.
     *
     * @param name the path to show in messages
     * @param text what it holds
     */
    public SourceFile(String name, String text) {
        this.name = name;
        this.text = text;
        this.lineStarts = lineStarts(text);
    }

    private static int[] lineStarts(String text) {
        int[] starts = new int[64];
        int count = 1;
        for (int at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) {
            if (count == starts.length) {
                starts = Arrays.copyOf(starts, 2 * count);
            }
            starts[count++] = at + 1;
        }
        return Arrays.copyOf(starts, count);
    }

    public String name() {
        return name;
    }

    public String text() {
        return text;
    }

    /** Where a line begins. A line past the end begins at the end. */
    public int lineStart(int line) {
        return line > lineStarts.length ? text.length() : lineStarts[line - 1];
    }

    /** The line that holds a character, counted from 1. */
    public int lineAt(int offset) {
        int found = Arrays.binarySearch(lineStarts, offset);
        return found >= 0 ? found + 1 : -found - 1;
    }

    /** The text of a line, without its end. */
    public String line(int line) {
        int from = lineStart(line);
        int end = text.indexOf('\n', from);
        return text.substring(from, end < 0 ? text.length() : end);
    }

    /** The place from {@code start} to {@code end}, {@code end} not included. */
    public Span span(int start, int end) {
        return new Span(this, start, end);
    }

    /** The whole of a line. */
    public Span lineSpan(int line) {
        int from = lineStart(line);
        return span(from, from + line(line).length());
    }

    /** The first place of {@code words} between two offsets, or the start of that stretch if they are not there. */
    public Span find(String words, int from, int end) {
        int at = text.indexOf(words, from);
        return at >= 0 && at < end ? span(at, at + words.length()) : span(from, end);
    }
}
