package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever has learned the order of isolating in one lesson must not read another in the next. */
class OneOrderTest {
    private static final Path CONTENT = Path.of("../content");
    private static final String ORDER =
            "oads, chargers and solar panel off; breaker open; negative lead off; then the main fuse-links";

    private static List<Path> texts() throws IOException {
        try (Stream<Path> files = Files.walk(CONTENT)) {
            return files.filter(file -> file.toString().endsWith(".md")).sorted().toList();
        }
    }

    /** The words as they are read: links to the list of words fall away. */
    private static String text(Path file) throws IOException {
        return Files.readString(file).replaceAll("\\[([^\\]]+)\\]\\(word:[^)]+\\)", "$1").replaceAll("\\s+", " ");
    }

    @Test
    void whereverItIsToldTheWordsAreTheSame() throws IOException {
        List<String> others = new ArrayList<>();
        for (Path file : texts()) {
            String left = text(file).replace(ORDER, "");
            if (left.contains("breaker open;") || left.contains("then the main fuse-links.") || left.contains("negative lead off;")) {
                others.add(file.toString());
            }
        }
        assertEquals(List.of(), others);
    }

    @Test
    void eachLessonInWhichHandsGoToTheCircuitTellsIt() throws IOException {
        for (String lesson : List.of("01-", "05b-", "06-", "10-", "11-", "13-", "14-", "15-", "16-", "17-", "18-", "19-")) {
            Path file = texts().stream().filter(each -> each.toString().contains("lessons/" + lesson)).findFirst().orElseThrow();
            assertTrue(text(file).contains(ORDER), file.toString());
        }
        for (String page : List.of("first-job", "your-circuit", "workshop")) {
            assertTrue(text(CONTENT.resolve("pages/" + page + ".md")).contains(ORDER), page);
        }
    }
}
