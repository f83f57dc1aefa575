package loomwright.generator.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import loomwright.generator.TestSite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A build that keeps what has not changed gives the same site as one that keeps nothing. */
class BuildAgainTest {
    private static final String EXAMPLE = """
            ## Heat

            ```example
            key: heater
            title: A heater
            story: It is cold.
            calculator: resistor-current
            given: { voltage: 12 V, resistance: 4 Ω }
            pins:
              - { result: current, expect: 3 A, tolerance: 2 A, kind: printed, source: rod-book }
            ```
            """;

    @TempDir
    Path folder;

    private TestSite site;
    private SiteBuild build;

    @BeforeEach
    void begin() {
        site = new TestSite(folder).lesson(EXAMPLE);
        site.write("lessons/02-second/lesson.md", TestSite.FRONT + "It draws {{heater.current}} at {{scenario.bench-route}}: [ohm](word:ohm).\n");
        build = site.build().again();
        agree();
    }

    /** Compares files and problems of the keeping build with those of a fresh one. */
    private void agree() {
        Map<String, String> kept = new TreeMap<>();
        String problems = build.run((address, bytes) -> kept.put(address, new String(bytes, StandardCharsets.UTF_8))).problems().text();
        assertEquals(site.problems(), problems.replace(folder.toString(), "content"));
        assertEquals(site.files(), kept);
    }

    /** The same parts with a service worker: a finished site has it, one that is being written has not. */
    @Test
    void noBrowserIsToKeepASiteThatIsBeingWritten(@TempDir Path parts) throws IOException {
        try (Stream<Path> tree = Files.walk(TestSite.PARTS)) {
            for (Path each : tree.filter(Files::isRegularFile).toList()) {
                Path copy = parts.resolve(TestSite.PARTS.relativize(each).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(each, copy);
            }
        }
        Files.createDirectories(parts.resolve("worker"));
        Files.writeString(parts.resolve("worker/worker.js"), "// keeps FILES\n");
        site.parts(parts);
        assertTrue(site.files().get("worker.js").contains("\"index.html\": \""));
        Set<String> again = new TreeSet<>();
        site.build().again().run((address, bytes) -> again.add(address));
        assertTrue(again.contains("index.html"));
        assertFalse(again.contains("worker.js"));
    }

    @Test
    void afterNoChange() {
        agree();
    }

    @Test
    void afterAChangeOfTheText() {
        site.lesson(EXAMPLE + "\nMore.\n");
        agree();
    }

    @Test
    void afterAChangeOfAResultThatAnotherLessonShows() {
        site.lesson(EXAMPLE.replace("12 V", "16 V"));
        agree();
    }

    @Test
    void afterAChangeOfTitleScenarioTermTableOrSource() {
        site.write(TestSite.LESSON, site.read(TestSite.LESSON).replace("title: First", "title: Other"));
        agree();
        site.write("scenario.yaml", site.read("scenario.yaml").replace("4.2", "5.2"));
        agree();
        site.write("glossary.md", "## volt\n\nThe unit of voltage.\n");
        agree();
        site.write("tables/rods.csv", site.read("tables/rods.csv").replace("of rods", "of other rods"));
        agree();
        site.write("sources.csv", site.read("sources.csv").replace("The Rod Book", "Another Book"));
        agree();
    }

    @Test
    void afterAChangeOfAPageOrOfWhatALessonAddsToOthers() {
        site.write("pages/about.md", "---\ntitle: About\nsummary: About us.\n---\nSome words.\n");
        agree();
        site.write("pages/about.md", "---\ntitle: About\nsummary: About us.\n---\nOther words.\n");
        agree();
        site.write("pages/lessons.md", "---\ntitle: All\nsummary: All of them.\n---\nIn their order.\n");
        agree();
        site.write("glossary.md", "## ohm\n\nThe unit of resistance, once more.\n");
        agree();
        site.write(TestSite.LESSON, site.read(TestSite.LESSON).replace("goal: do it", "goal: do it well"));
        agree();
        site.lesson(EXAMPLE + "\nSee [the book](source:rod-book).\n");
        agree();
        site.write("pages/about.md", "---\ntitle: About\nsummary: About us.\n---\nSee [this](page:nothing).\n");
        agree();
        agree();
    }

    @Test
    void afterAMistakeAndItsMending() {
        String sound = site.read(TestSite.LESSON);
        site.write(TestSite.LESSON, sound + "\n[dead](lesson:03) [anchor](#nowhere)\n");
        agree();
        agree();
        site.write(TestSite.LESSON, sound);
        agree();
    }
}
