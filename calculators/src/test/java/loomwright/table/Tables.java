package loomwright.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads tables from the content folder, by name. */
final class Tables {
    private static final Path CONTENT = Path.of("../content");

    private Tables() {}

    static Table named(String key) {
        try {
            return TableReader.read(
                    key,
                    Files.readString(CONTENT.resolve("tables/" + key + ".csv")),
                    DocumentReader.read(Files.readString(CONTENT.resolve("sources.csv"))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
