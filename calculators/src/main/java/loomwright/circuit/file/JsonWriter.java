package loomwright.circuit.file;

/** Writes JSON, one member a line, so that two files can be compared line by line. */
final class JsonWriter {
    private final StringBuilder text = new StringBuilder();
    private int depth;
    private boolean first = true;

    void open(char bracket) {
        text.append(bracket);
        depth++;
        first = true;
    }

    void close(char bracket) {
        depth--;
        if (!first) {
            newLine();
        }
        text.append(bracket);
        first = false;
    }

    /** Begins the next member or item. */
    void next() {
        if (!first) {
            text.append(',');
        }
        newLine();
        first = false;
    }

    void key(String key) {
        next();
        quoted(key);
        text.append(": ");
    }

    void text(String key, String value) {
        key(key);
        quoted(value);
    }

    void number(String key, int value) {
        key(key);
        text.append(value);
    }

    private void newLine() {
        text.append('\n');
        for (int i = 0; i < depth; i++) {
            text.append("  ");
        }
    }

    /** Text in quotes. What could end a script or a comment of a page is written as an escape, though no page should need it. */
    private void quoted(String value) {
        text.append('"');
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c == '"' || c == '\\') {
                text.append('\\').append(c);
            } else if (c < ' ' || c == '<' || c == '>' || c == '&' || c == 0x7f || c == '\u2028' || c == '\u2029') {
                text.append("\\u").append(Utf8.hex(c, 4));
            } else {
                text.append(c);
            }
        }
        text.append('"');
    }

    String written() {
        return text.append('\n').toString();
    }
}
