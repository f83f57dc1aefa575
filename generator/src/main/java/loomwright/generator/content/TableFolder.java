package loomwright.generator.content;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.source.Document;
import loomwright.table.Column;
import loomwright.table.DocumentReader;
import loomwright.table.Row;
import loomwright.table.Table;
import loomwright.table.TableFault;
import loomwright.table.TableReader;

/** Reads {@code sources.csv} and the table files. */
final class TableFolder {
    static final String SOURCES = "sources.csv";
    private static final String ENDING = ".csv";

    private final Folder folder;
    private final Problems problems;

    TableFolder(Folder folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    Map<String, Document> documents() {
        Map<String, Document> documents = new LinkedHashMap<>();
        SourceFile file = folder.read(SOURCES);
        if (file == null) {
            return documents;
        }
        try {
            for (Document document : DocumentReader.read(file.text())) {
                if (documents.put(document.key(), document) != null) {
                    int again = file.text().lastIndexOf("\n" + document.key() + ",") + 1;
                    problems.add(file.span(again, again)
                            .problem("the document \"" + document.key() + "\" is listed twice", "Keep one of the two lines."));
                }
            }
        } catch (TableFault fault) {
            report(file, fault);
        }
        return documents;
    }

    Map<String, TableFile> tables(Map<String, Document> documents) {
        Map<String, TableFile> tables = new LinkedHashMap<>();
        for (String key : folder.keys("tables", ENDING)) {
            SourceFile file = folder.read("tables/" + key + ENDING);
            if (file != null) {
                addIfSound(tables, key, file, List.copyOf(documents.values()));
            }
        }
        return tables;
    }

    private void addIfSound(Map<String, TableFile> tables, String key, SourceFile file, List<Document> documents) {
        try {
            Table table = TableReader.read(key, file.text(), documents);
            if (figuresAreSound(table, file)) {
                tables.put(key, new TableFile(table, file));
            }
        } catch (TableFault fault) {
            report(file, fault);
        }
    }

    /** Reads every cell once, so that a slip of typing is found here and not when a lesson needs the row. */
    private boolean figuresAreSound(Table table, SourceFile file) {
        boolean sound = true;
        for (Row row : table.rows()) {
            for (Column column : table.columns()) {
                if (column.unit() != null && row.has(column.key())) {
                    try {
                        row.quantity(column.key());
                    } catch (TableFault fault) {
                        report(file, fault);
                        sound = false;
                    }
                }
            }
        }
        return sound;
    }

    private void report(SourceFile file, TableFault fault) {
        problems.add(file.lineSpan(Math.max(1, fault.line())).problem(fault.getMessage(), fault.remedy().replace("content/" + SOURCES, folder.name() + "/" + SOURCES)));
    }
}
