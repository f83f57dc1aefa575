package loomwright.generator.page;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * What the page of search looks through, as a script: a script file loads from a disk, where reading other files is refused. The texts
 * are written out as they come and not kept.
 */
final class SearchData {
    static final String LIBRARY = "lunr.js";
    static final String FILE = "search-data.js";

    /** One page, or one word of the glossary. */
    record Entry(String title, String address, String kind) {}

    private final List<Entry> entries = new ArrayList<>();
    private final ByteArrayOutputStream script = new ByteArrayOutputStream();

    SearchData() {
        write("window.LOOMWRIGHT_SEARCH = [\n");
    }

    void add(String title, String address, String kind, String summary, String text) {
        entries.add(new Entry(title, address, kind));
        StringBuilder out = new StringBuilder(text.length() + 200);
        field(out.append('{'), "title", title);
        field(out.append(','), "address", address);
        field(out.append(','), "kind", kind);
        field(out.append(','), "summary", summary);
        field(out.append(','), "text", text);
        write(out.append("},\n").toString());
    }

    List<Entry> entries() {
        return entries;
    }

    /** The whole script; nothing can be added after it. */
    byte[] script() {
        write("];\n");
        return script.toByteArray();
    }

    private void write(String text) {
        script.writeBytes(text.getBytes(StandardCharsets.UTF_8));
    }

    private static void field(StringBuilder out, String name, String text) {
        out.append('"').append(name).append("\":\"");
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
        out.append('"');
    }
}
