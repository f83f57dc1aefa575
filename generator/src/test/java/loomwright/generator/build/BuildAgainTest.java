package loomwright.generator.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
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
        site.write("lessons/02-second/lesson.md", TestSite.FRONT + "It draws {{heater.current}} at {{scenario.bench-route}}: [ohm](term:ohm).\n");
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
    void afterAMistakeAndItsMending() {
        String sound = site.read(TestSite.LESSON);
        site.write(TestSite.LESSON, sound + "\n[dead](lesson:03) [anchor](#nowhere)\n");
        agree();
        agree();
        site.write(TestSite.LESSON, sound);
        agree();
    }
}
