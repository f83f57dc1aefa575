package loomwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loomwright.worked.Trial;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What a reader sees, to the letter, for entries whose answers were worked by hand: {@code src/test/resources/curated/entries.txt}. */
class CuratedEntriesTest {
    private static final Path LIST = Path.of("src/test/resources/curated/entries.txt");

    @TestFactory
    Stream<DynamicTest> showsTheFigureAndTheUnitWorkedByHand() throws IOException {
        return lines().map(line -> DynamicTest.dynamicTest(line, () -> holds(line.split("\\s*\\|\\s*", -1))));
    }

    private static void holds(String[] cells) {
        assertEquals(5, cells.length);
        Trial trial = Trial.of(cells[0], cells[1].split(";\\s*"));
        for (String shown : cells[2].split(";\\s*")) {
            int equals = shown.indexOf('=');
            String key = shown.substring(0, equals);
            assertTrue(trial.answers(key), () -> "no " + key + " among " + trial.working().results());
            assertEquals(shown.substring(equals + 1), trial.working().result(key).quantity().text().replace('\u00a0', ' '), key);
        }
        if (!cells[3].isEmpty()) {
            assertEquals(cells[3], trial.working().findings().stream().map(finding -> finding.verdict().key()).collect(Collectors.joining(" ")));
        }
    }

    @Test
    void everyCalculatorOfTheListHasSix() throws IOException {
        Map<String, Long> counts = lines().collect(Collectors.groupingBy(line -> line.substring(0, line.indexOf(' ')), Collectors.counting()));
        assertTrue(counts.size() >= 12, counts.toString());
        assertEquals(List.of(6L), counts.values().stream().distinct().toList());
    }

    private static Stream<String> lines() throws IOException {
        return Files.readAllLines(LIST).stream().filter(line -> !line.startsWith("#"));
    }
}
