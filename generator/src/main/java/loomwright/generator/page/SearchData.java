package loomwright.generator.page;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the page of search looks through, as a script: a script file loads from a disk, where reading other files is refused. The texts
 * are written out as they come and not kept.
 */
final class SearchData {
    static final String LIBRARY = "lunr.js";
    static final String FILE = "search-data.js";

    private static final String OPENING = "window.LOOMWRIGHT_SEARCH = [\n";

    /** One page, or one word of the glossary. */
    record Entry(String title, String address, String kind) {}

    private final List<Entry> entries = new ArrayList<>();
    private final Set<String> addresses = new HashSet<>();
    private final ByteArrayOutputStream script = new ByteArrayOutputStream();

    SearchData() {
        write(OPENING);
    }

    void add(String title, String address, String kind, String summary, String text) {
        entries.add(new Entry(title, address, kind));
        addSection(title, address, kind, summary, text);
    }

    /** Something to be found that is not a page or a word by itself, such as a section of a lesson: it does not stand in the list from A to Z. */
    void addSection(String title, String address, String kind, String summary, String text) {
        addresses.add(address);
        StringBuilder out = new StringBuilder(text.length() + 200);
        field(out.append('{'), "title", title);
        field(out.append(','), "address", address);
        field(out.append(','), "kind", kind);
        field(out.append(','), "summary", summary);
        field(out.append(','), "text", text);
        write(out.append("},\n").toString());
    }

    /** Adds everything that was gathered apart. */
    void takeOver(SearchData other) {
        entries.addAll(other.entries);
        addresses.addAll(other.addresses);
        byte[] bytes = other.script.toByteArray();
        script.write(bytes, OPENING.length(), bytes.length - OPENING.length());
    }

    List<Entry> entries() {
        return entries;
    }

    /** Whether something is to be found at an address. */
    boolean has(String address) {
        return addresses.contains(address);
    }

    /**
     * The whole script; nothing can be added after it.
     *
     * @param alike words that mean the same to a reader
     * @param asked words of readers' own, by the address that answers
     */
    byte[] script(List<List<String>> alike, Map<String, String> asked) {
        write("];\nwindow.LOOMWRIGHT_ALIKE = [\n");
        for (List<String> words : alike) {
            StringBuilder out = new StringBuilder();
            write(quoted(out, String.join(" ", words)).append(",\n").toString());
        }
        write("];\nwindow.LOOMWRIGHT_ASKED = {\n");
        asked.forEach((address, words) -> write(quoted(quoted(new StringBuilder(), address).append(':'), words).append(",\n").toString()));
        write("};\n");
        return script.toByteArray();
    }

    private void write(String text) {
        script.writeBytes(text.getBytes(StandardCharsets.UTF_8));
    }

    private static void field(StringBuilder out, String name, String text) {
        quoted(out.append('"').append(name).append("\":"), text);
    }

    private static StringBuilder quoted(StringBuilder out, String text) {
        out.append('"');
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
        return out.append('"');
    }
}
