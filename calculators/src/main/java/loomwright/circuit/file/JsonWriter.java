package loomwright.circuit.file;

/** Writes JSON, one member a line, so that two files can be compared line by line. */
public final class JsonWriter {
    private final StringBuilder text = new StringBuilder();
    private int depth;
    private boolean first = true;

    /** Opens an object or a list with its bracket. */
    public void open(char bracket) {
        text.append(bracket);
        depth++;
        first = true;
    }

    /** Closes it with the other bracket. */
    public void close(char bracket) {
        depth--;
        if (!first) {
            newLine();
        }
        text.append(bracket);
        first = false;
    }

    /** Begins the next member or item. */
    public void next() {
        if (!first) {
            text.append(',');
        }
        newLine();
        first = false;
    }

    /** Begins a member; its value comes next. */
    public void key(String key) {
        next();
        quoted(key);
        text.append(": ");
    }

    /** A member that is a text. */
    public void text(String key, String value) {
        key(key);
        quoted(value);
    }

    /** A number, as JSON writes numbers. */
    public void number(String key, String digits) {
        key(key);
        text.append(digits);
    }

    /** The next item of a list: a text. */
    public void item(String value) {
        next();
        quoted(value);
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

    /** All that was written. */
    public String written() {
        return text.append('\n').toString();
    }
}
