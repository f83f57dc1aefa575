package loomwright.generator.mistake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import loomwright.generator.TestSite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A small sound site that a test puts a mistake into. Each test compares the whole message. */
abstract class MistakeTest {
    static final String GIVEN = "{ voltage: 12 V, resistance: 4 Ω }";
    static final String PIN =
            "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: printed, source: rod-book }";

    /** A lesson with an example; its {@code given} stands in line 14, its pin in line 16. */
    TestSite example(String given, String pin) {
        return site.lesson("""
                ## Heat

                ```example
                key: heater
                title: A heater
                story: It is cold.
                calculator: resistor-current
                given: %s
                pins:
                  - %s
                ```
                """.formatted(given, pin));
    }

    /** A lesson with a sound example and a line of text, which is line 18. */
    TestSite textBelowExample(String text) {
        example(GIVEN, PIN);
        return site.lesson(site.read(TestSite.LESSON).substring(TestSite.FRONT.length()) + text + "\n");
    }

    @TempDir
    Path folder;

    TestSite site;

    @BeforeEach
    void begin() {
        site = new TestSite(folder);
    }

    void rejects(String expected) {
        assertEquals(expected, site.problems());
    }
}
