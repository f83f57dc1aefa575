import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Writes the published tables, the list of documents and the circuits of the lessons as Java constants, so that the calculators need no
 * files in the browser.
 *
 * <p>Run by the build before the calculators are compiled: {@code java EmbedTables.java CONTENT_FOLDER OUTPUT_FOLDER}. It only copies
 * text; mistakes in a table are reported by the generator, with their line. A table or document that no calculator names is dropped by
 * the compiler of the page's program. Remarks are left out: they are for the reader of a whole table, and the page would carry them along.
 */
final class EmbedTables {
    public static void main(String[] arguments) throws IOException {
        Path content = Path.of(arguments[0]);
        Path folder = Path.of(arguments[1]).resolve("loomwright/table");
        Files.createDirectories(folder);
        Map<String, String> documents = documents(content.resolve("sources.csv"));
        write(folder.resolve("Documents.java"), documentsClass(documents));
        write(folder.resolve("PublishedTables.java"), tablesClass(content.resolve("tables"), documents));
        Path circuits = Path.of(arguments[1]).resolve("loomwright/circuit/file");
        Files.createDirectories(circuits);
        write(circuits.resolve("CircuitTexts.java"), circuitsClass(content.resolve("circuits")));
    }

    private static Map<String, String> documents(Path file) throws IOException {
        Map<String, String> byKey = new TreeMap<>();
        for (String line : Files.readAllLines(file)) {
            int comma = line.indexOf(',');
            if (comma > 0 && !line.startsWith("#") && !line.startsWith("key,")) {
                byKey.put(line.substring(0, comma), withoutRemarks(line));
            }
        }
        return byKey;
    }

    private static String documentsClass(Map<String, String> documents) {
        StringBuilder text = opening("The documents of {@code content/sources.csv}, one method each.", "Documents");
        text.insert(text.indexOf("/**"), "import loomwright.source.Document;\n\n");
        documents.forEach((key, line) -> text.append("    public static Document ")
                .append(javaName(key))
                .append("() {\n        return DocumentReader.document(")
                .append(quoted(line))
                .append(");\n    }\n\n"));
        return text.append("}\n").toString();
    }

    private static String tablesClass(Path tables, Map<String, String> documents) throws IOException {
        StringBuilder text = opening("The tables of {@code content/tables}, one method each; read once, when first asked for.", "PublishedTables");
        text.insert(text.indexOf("/**"), "import java.util.List;\n\n");
        for (Path file : files(tables, ".csv")) {
            String key = file.getFileName().toString().replace(".csv", "");
            String table = withoutRemarks(Files.readAllLines(file));
            String holder = "Held_" + javaName(key);
            text.append("    public static Table ").append(javaName(key)).append("() {\n        return ").append(holder)
                    .append(".TABLE;\n    }\n\n    private static final class ").append(holder)
                    .append(" {\n        static final Table TABLE = TableReader.read(\"").append(key).append("\", ")
                    .append(quoted(table)).append(", List.of(").append(documentsOf(table, documents)).append("));\n    }\n\n");
        }
        return text.append("}\n").toString();
    }

    private static String circuitsClass(Path circuits) throws IOException {
        StringBuilder text = new StringBuilder("package loomwright.circuit.file;\n\n/** The files of {@code content/circuits}, one method each."
                + " Written by the build. */\nfinal class CircuitTexts {\n    private CircuitTexts() {}\n\n");
        for (Path file : files(circuits, ".json")) {
            StringBuilder joined = new StringBuilder();
            for (String line : Files.readAllLines(file)) {
                joined.append(line.strip()).append(line.isBlank() ? "" : " ");
            }
            text.append("    static String ").append(javaName(file.getFileName().toString().replace(".json", ""))).append("() {\n        return ")
                    .append(quoted(joined.toString().strip())).append(";\n    }\n\n");
        }
        return text.append("}\n").toString();
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
        }
    }

    /** A document with its key, title, edition and standing; who issued it and how it was seen stay with the page of sources. */
    private static String withoutRemarks(String document) {
        List<String> cells = EmbedCells.split(document);
        for (int remark : new int[] {1, 5, 6}) {
            cells.set(remark, "");
        }
        return String.join(",", cells);
    }

    /** A table without its notes and without the columns that only a reader of the whole table needs. */
    private static String withoutRemarks(List<String> lines) {
        StringBuilder kept = new StringBuilder();
        Set<Integer> dropped = null;
        for (String line : lines) {
            if (line.startsWith("#")) {
                kept.append(line.startsWith("# note:") ? "" : line + "\n");
            } else if (!line.isBlank()) {
                List<String> cells = EmbedCells.split(line);
                dropped = dropped == null ? remarks(cells) : dropped;
                kept.append(EmbedCells.joinWithout(cells, dropped)).append('\n');
            }
        }
        return kept.toString();
    }

    private static Set<Integer> remarks(List<String> columns) {
        int note = columns.indexOf("note");
        return note < 0 ? Set.of() : Set.of(note);
    }

    /** The documents a table names: in its head, or as a whole cell of a row. */
    private static String documentsOf(String table, Map<String, String> documents) {
        Set<String> named = new TreeSet<>();
        for (String line : table.split("\n")) {
            for (String cell : line.replace("# source:", "").split(",")) {
                if (documents.containsKey(cell.strip())) {
                    named.add("Documents." + javaName(cell.strip()) + "()");
                }
            }
        }
        return String.join(", ", named);
    }

    private static StringBuilder opening(String what, String name) {
        return new StringBuilder("package loomwright.table;\n\n/** ").append(what)
                .append(" Written by the build. */\npublic final class ").append(name)
                .append(" {\n    private ").append(name).append("() {}\n\n");
    }

    /** {@code 33-cfr-183} becomes {@code no33Cfr183}: a Java name cannot begin with a digit. */
    private static String javaName(String key) {
        StringBuilder name = new StringBuilder(Character.isDigit(key.charAt(0)) ? "no" : "");
        boolean upper = name.length() > 0;
        for (char c : key.toCharArray()) {
            if (c == '-' || c == '.' || c == '_') {
                upper = true;
            } else {
                name.append(upper ? Character.toUpperCase(c) : c);
                upper = false;
            }
        }
        return name.toString();
    }

    private static String quoted(String text) {
        String escaped = text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n");
        return "\"" + escaped + "\"";
    }

    /** Leaves an unchanged file alone, so that nothing is compiled again without need. */
    private static void write(Path file, String text) throws IOException {
        if (!Files.exists(file) || !Files.readString(file).equals(text)) {
            Files.writeString(file, text);
        }
    }
}

/** The cells of a line, with their quotes. */
final class EmbedCells {
    private EmbedCells() {}

    static List<String> split(String line) {
        List<String> cells = new ArrayList<>();
        boolean quoted = false;
        int start = 0;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            quoted ^= c == '"';
            if (c == ',' && !quoted) {
                cells.add(line.substring(start, i));
                start = i + 1;
            }
        }
        cells.add(line.substring(start));
        return cells;
    }

    static String joinWithout(List<String> cells, Set<Integer> dropped) {
        List<String> kept = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            if (!dropped.contains(i)) {
                kept.add(cells.get(i));
            }
        }
        return String.join(",", kept);
    }
}
