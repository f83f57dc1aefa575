package loomwright.circuit.file;

/** Reads the texts of a JSON text, with their escapes. */
final class JsonText {
    static final int LONGEST = 200;

    private JsonText() {}

    /** The text that begins with the quote at the cursor. */
    static String read(JsonCursor cursor, String path) {
        cursor.next();
        StringBuilder text = new StringBuilder();
        while (cursor.peek() != '"') {
            if (cursor.isAtEnd()) {
                throw cursor.fault(path, "A text has no closing quote: the file was cut off");
            }
            if (cursor.peek() < ' ') {
                throw cursor.fault(path, "A text holds a control character");
            }
            char c = cursor.next();
            text.append(c == '\\' ? escaped(cursor, path) : c);
            if (text.length() > LONGEST) {
                throw cursor.fault(path, "A text is longer than " + LONGEST + " characters");
            }
        }
        cursor.next();
        return text.toString();
    }

    private static char escaped(JsonCursor cursor, String path) {
        char c = cursor.isAtEnd() ? 0 : cursor.next();
        return switch (c) {
            case '"', '\\', '/' -> c;
            case 'b' -> '\b';
            case 'f' -> '\f';
            case 'n' -> '\n';
            case 'r' -> '\r';
            case 't' -> '\t';
            case 'u' -> codeUnit(cursor, path);
            default -> throw cursor.fault(path, "A backslash is followed by something it cannot stand before");
        };
    }

    private static char codeUnit(JsonCursor cursor, String path) {
        int unit = 0;
        for (int i = 0; i < 4; i++) {
            int digit = Utf8.hexDigit(cursor.peek());
            if (digit < 0) {
                throw cursor.fault(path, "\\u is not followed by four hexadecimal digits");
            }
            cursor.next();
            unit = unit * 16 + digit;
        }
        return (char) unit;
    }
}
