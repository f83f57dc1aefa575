package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;

/** What the page of search looks through, as a script: a script file loads from a disk, where reading other files is refused. */
final class SearchData {
    static final String LIBRARY = "lunr.js";
    static final String FILE = "search-data.js";

    /** One page, or one word of the glossary. */
    record Entry(String title, String address, String kind, String summary, String text) {}

    private final List<Entry> entries = new ArrayList<>();

    void add(String title, String address, String kind, String summary, String text) {
        entries.add(new Entry(title, address, kind, summary, text));
    }

    List<Entry> entries() {
        return entries;
    }

    String script() {
        StringBuilder out = new StringBuilder("window.LOOMWRIGHT_SEARCH = [\n");
        for (Entry entry : entries) {
            out.append("{\"title\":").append(quoted(entry.title()));
            out.append(",\"address\":").append(quoted(entry.address()));
            out.append(",\"kind\":").append(quoted(entry.kind()));
            out.append(",\"summary\":").append(quoted(entry.summary()));
            out.append(",\"text\":").append(quoted(entry.text())).append("},\n");
        }
        return out.append("];\n").toString();
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder(text.length() + 2).append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ' || c == '\u2028' || c == '\u2029') {
                out.append(' ');
            } else {
                out.append(c);
            }
        }
        return out.append('"').toString();
    }
}
