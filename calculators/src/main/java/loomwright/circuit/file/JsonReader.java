package loomwright.circuit.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Reads JSON, within limits that a hostile file cannot pass: size, depth, number of values, length of texts. A key twice is a fault.
 *
 * @source RFC 8259, The JavaScript Object Notation (JSON) Data Interchange Format
 */
final class JsonReader {
    /** Above the largest circuit there can be; a test writes that one. */
    static final int MOST_BYTES = 3 * 1024 * 1024;
    static final int MOST_DEPTH = 6;
    static final int MOST_VALUES = 20_000;
    private static final int LONGEST_NUMBER = 20;

    private final JsonCursor cursor;
    private int values;

    private JsonReader(String text) {
        this.cursor = new JsonCursor(text);
    }

    /**
     * Reads one value that fills the text.
     *
     * @throws JsonFault if it is none, or passes a limit
     */
    static Json read(String text) {
        if (Utf8.length(text) > MOST_BYTES) {
            throw new JsonFault(new FileFault(
                    "", 1, 1, "The file is larger than " + MOST_BYTES / (1024 * 1024) + " MB. No circuit needs so much: is it the right file?"));
        }
        JsonReader reader = new JsonReader(text);
        reader.cursor.skipSpace();
        if (reader.cursor.isAtEnd()) {
            throw reader.cursor.fault("", "The file is empty");
        }
        Json value = reader.value("", 1);
        reader.cursor.skipSpace();
        if (!reader.cursor.isAtEnd()) {
            throw reader.cursor.fault("", "The file goes on after its end with " + reader.cursor.here() + ": something was added");
        }
        return value;
    }

    private Json value(String path, int depth) {
        if (++values > MOST_VALUES) {
            throw cursor.fault(path, "There are more than " + MOST_VALUES + " values in this file");
        }
        int line = cursor.line();
        int column = cursor.column();
        char c = cursor.peek();
        if (c == '{' || c == '[') {
            if (depth > MOST_DEPTH) {
                throw cursor.fault(path, "Lists and objects are nested more than " + MOST_DEPTH + " deep");
            }
            return c == '{' ? members(path, depth, line, column) : items(path, depth, line, column);
        }
        if (c == '"') {
            return new Json.Text(line, column, JsonText.read(cursor, path));
        }
        if (c == '-' || c >= '0' && c <= '9') {
            return new Json.Digits(line, column, digits(path));
        }
        return new Json.Word(line, column, word(path));
    }

    private Json members(String path, int depth, int line, int column) {
        List<Json.Member> members = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        cursor.next();
        cursor.skipSpace();
        while (cursor.peek() != '}') {
            comma(path, members.isEmpty(), "}");
            int keyLine = cursor.line();
            int keyColumn = cursor.column();
            if (cursor.peek() != '"') {
                throw cursor.fault(path, "A name in double quotes is missing, there is " + cursor.here());
            }
            String key = JsonText.read(cursor, path);
            if (!keys.add(key)) {
                throw new JsonFault(new FileFault(path, keyLine, keyColumn, "\u201c" + key + "\u201d stands here twice: take one of them out"));
            }
            String inner = path.isEmpty() ? key : path + "." + key;
            cursor.skipSpace();
            take(path, ':');
            members.add(new Json.Member(key, keyLine, keyColumn, value(inner, depth + 1)));
            cursor.skipSpace();
        }
        cursor.next();
        return new Json.Members(line, column, List.copyOf(members));
    }

    private Json items(String path, int depth, int line, int column) {
        List<Json> items = new ArrayList<>();
        cursor.next();
        cursor.skipSpace();
        while (cursor.peek() != ']') {
            comma(path, items.isEmpty(), "]");
            items.add(value(path + "[" + items.size() + "]", depth + 1));
            cursor.skipSpace();
        }
        cursor.next();
        return new Json.Items(line, column, List.copyOf(items));
    }

    private void comma(String path, boolean first, String end) {
        if (!first) {
            if (cursor.peek() != ',') {
                throw cursor.fault(path, "A comma or \u201c" + end + "\u201d is missing, there is " + cursor.here());
            }
            take(path, ',');
        }
    }

    private void take(String path, char wanted) {
        if (cursor.peek() != wanted) {
            throw cursor.fault(path, "\u201c" + wanted + "\u201d is missing, there is " + cursor.here());
        }
        cursor.next();
        cursor.skipSpace();
    }

    private String digits(String path) {
        StringBuilder text = new StringBuilder();
        while (!cursor.isAtEnd() && isOfANumber(cursor.peek())) {
            text.append(cursor.next());
            if (text.length() > LONGEST_NUMBER) {
                throw cursor.fault(path, "A number has more than " + LONGEST_NUMBER + " digits");
            }
        }
        return text.toString();
    }

    private static boolean isOfANumber(char c) {
        return c >= '0' && c <= '9' || c == '-' || c == '+' || c == '.' || c == 'e' || c == 'E';
    }

    private String word(String path) {
        JsonFault fault = cursor.fault(path, "A value is missing, there is " + cursor.here());
        StringBuilder text = new StringBuilder();
        while (cursor.peek() >= 'a' && cursor.peek() <= 'z' && text.length() < 6) {
            text.append(cursor.next());
        }
        String word = text.toString();
        if (word.equals("true") || word.equals("false") || word.equals("null")) {
            return word;
        }
        throw fault;
    }
}
