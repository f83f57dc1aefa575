package loomwright.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loomwright.source.Document;
import loomwright.source.Standing;

/**
 * Writes the published tables, the list of documents and the circuits of the lessons as Java constants, so that the calculators need no
 * files in the browser.
 *
 * <p>Run by the build before the calculators are compiled, with a content folder and an output folder. It reads with the readers of the
 * calculators, so a mistake in a table ends the build here, with its line. A table or document that no calculator names is dropped by the
 * compiler of the page's program. Remarks are left out: they are for the reader of a whole table, and the page would carry them along.
 */
final class EmbedTables {
    private EmbedTables() {}

    public static void main(String[] arguments) throws IOException {
        Path content = Path.of(arguments[0]);
        Path folder = Path.of(arguments[1]).resolve("loomwright/table");
        Files.createDirectories(folder);
        List<Document> documents = read(content.resolve("sources.csv"), DocumentReader::read);
        write(folder.resolve("Documents.java"), documentsClass(documents));
        write(folder.resolve("PublishedTables.java"), tablesClass(content.resolve("tables"), documents));
        Path circuits = Path.of(arguments[1]).resolve("loomwright/circuit/file");
        Files.createDirectories(circuits);
        write(circuits.resolve("CircuitTexts.java"), circuitsClass(content.resolve("circuits")));
    }

    /** Reads a file, or ends the build with the place of the first mistake. */
    private static <T> T read(Path file, Function<String, T> reader) throws IOException {
        try {
            return reader.apply(Files.readString(file));
        } catch (TableFault fault) {
            System.err.println(file.normalize() + ":" + fault.line() + ": " + fault.getMessage() + ". " + fault.remedy());
            System.exit(1);
            throw fault;
        }
    }

    /** A document with its key, title, edition and standing; who issued it and how it was seen stay with the page of sources. */
    private static String documentsClass(List<Document> documents) {
        StringBuilder text = opening("The documents of {@code content/sources.csv}, one method each.", "Documents");
        text.insert(text.indexOf("/**"), "import loomwright.source.Document;\nimport loomwright.source.Standing;\n\n");
        for (Document document : documents) {
            text.append("    public static Document ").append(javaName(document.key())).append("() {\n        return new Document(")
                    .append(quoted(document.key())).append(", \"\", ").append(quoted(document.title())).append(", ")
                    .append(quoted(document.edition())).append(", Standing.").append(document.standing().name())
                    .append(", \"\", \"\");\n    }\n\n");
        }
        return text.append("}\n").toString();
    }

    private static String tablesClass(Path tables, List<Document> documents) throws IOException {
        StringBuilder text = opening("The tables of {@code content/tables}, one method each; read once, when first asked for.", "PublishedTables");
        text.insert(text.indexOf("/**"), "import java.util.List;\n\n");
        for (Path file : files(tables, ".csv")) {
            String key = file.getFileName().toString().replace(".csv", "");
            Table table = read(file, whole -> TableReader.read(key, whole, documents));
            String holder = "Held_" + javaName(key);
            text.append("    public static Table ").append(javaName(key)).append("() {\n        return ").append(holder)
                    .append(".TABLE;\n    }\n\n    private static final class ").append(holder)
                    .append(" {\n        static final Table TABLE = TableReader.readAgain(\"").append(key).append("\", ")
                    .append(quoted(withoutRemarks(Files.readString(file), table))).append(", List.of(").append(documentsOf(table)).append("));\n    }\n\n");
        }
        return text.append("}\n").toString();
    }

    /** A table without its notes, without what it says twice, and without the columns that hold nothing or only a reader of the whole table needs. */
    private static String withoutRemarks(String whole, Table table) {
        StringBuilder kept = new StringBuilder();
        whole.lines().filter(line -> line.startsWith("#") && !isNeedless(line, table)).forEach(line -> kept.append(line).append('\n'));
        List<Column> columns = table.columns().stream().filter(column -> !column.key().equals("note") && !isEmpty(column, table)).toList();
        kept.append(columns.stream().map(EmbedTables::head).collect(Collectors.joining(","))).append('\n');
        for (Row row : table.rows()) {
            kept.append(columns.stream().map(column -> cell(kept(row, column))).collect(Collectors.joining(","))).append('\n');
        }
        return kept.toString();
    }

    private static boolean isNeedless(String line, Table table) {
        Standing ofDocument = table.source().document().standing();
        boolean usual = line.equals("# shown: rows") || line.startsWith("# standing:") && table.source().standing() == ofDocument;
        return usual || line.startsWith("# note:");
    }

    /** A row without these columns takes what the head says. */
    private static boolean isEmpty(Column column, Table table) {
        return column.isOfTheSource() && table.rows().stream().allMatch(row -> kept(row, column).isEmpty());
    }

    /** The text of a cell; empty for a standing that the row has by its document anyway. */
    private static String kept(Row row, Column column) {
        Standing usual = row.has("source") ? row.source().document().standing() : row.table().source().standing();
        boolean said = column.key().equals("standing") && Standing.named(row.text("standing")) == usual;
        return said ? "" : row.text(column.key());
    }

    private static String head(Column column) {
        return column.unit() == null ? column.key() : column.key() + " (" + column.unit().symbol() + ")";
    }

    private static String cell(String text) {
        return text.contains(",") || text.contains("\"") ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
    }

    /** The documents a table names, in its head or in a row. */
    private static String documentsOf(Table table) {
        Set<String> named = new TreeSet<>();
        named.add(table.source().document().key());
        table.rows().forEach(row -> named.add(row.source().document().key()));
        return named.stream().map(key -> "Documents." + javaName(key) + "()").collect(Collectors.joining(", "));
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
