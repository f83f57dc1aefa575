package loomwright.generator.problem;

/**
 * A place in a file.
 *
 * @param file the file
 * @param start its first character
 * @param end the character after its last
 */
public record Span(SourceFile file, int start, int end) {

    public String text() {
        return file.text().substring(start, end);
    }

    /** The line it begins in, counted from 1. */
    public int line() {
        return file.lineAt(start);
    }

    /** The column it begins in, counted from 1 in UTF-16 units: {@code Ω} counts one. */
    public int column() {
        return start - file.lineStart(line()) + 1;
    }

    /** The place of {@code words} inside this one, or the whole of it if they are not written out here. */
    public Span find(String words) {
        return file.find(words, start, end);
    }

    /**
     * A problem at this place.
     *
     * @param words what is wrong, without a full stop
     * @param remedy what to do, in full sentences
     */
    public Problem problem(String words, String remedy) {
        return new Problem(file.name(), line(), column(), words, remedy, file.line(line()));
    }
}
