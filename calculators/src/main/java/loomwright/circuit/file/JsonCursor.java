package loomwright.circuit.file;

/** A place in a text that knows its line and column. */
final class JsonCursor {
    private final String text;
    private int at;
    private int line = 1;
    private int lineStart;

    JsonCursor(String text) {
        this.text = text;
        // A mark at the start that some editors write.
        this.at = text.startsWith("\ufeff") ? 1 : 0;
        this.lineStart = at;
    }

    boolean isAtEnd() {
        return at >= text.length();
    }

    /** The next character; 0 at the end. */
    char peek() {
        return isAtEnd() ? 0 : text.charAt(at);
    }

    char next() {
        char c = text.charAt(at++);
        boolean newLine = c == '\n' || c == '\r' && peek() != '\n';
        if (newLine) {
            line++;
            lineStart = at;
        }
        return c;
    }

    int line() {
        return line;
    }

    int column() {
        return at - lineStart + 1;
    }

    void skipSpace() {
        while (!isAtEnd() && (peek() == ' ' || peek() == '\t' || peek() == '\n' || peek() == '\r')) {
            next();
        }
    }

    /** The fault that stands at this place. */
    JsonFault fault(String path, String message) {
        return new JsonFault(new FileFault(path, line, column(), message));
    }

    /** What stands here, for a message. */
    String here() {
        if (isAtEnd()) {
            return "the end of the file";
        }
        char c = peek();
        return c > ' ' && c < 0x7f ? "\u201c" + c + "\u201d" : "a character that does not belong there";
    }
}
