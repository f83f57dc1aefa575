package loomwright.generator.mistake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts that are nested beyond any sense, or open links and never close them: told with their line, and told soon. */
class NestingErrorTest extends MistakeTest {
    private static final Duration SOON = Duration.ofSeconds(20);

    @Test
    void rejectsQuotesWithinQuotes() {
        site.lesson("Fine.\n\n" + ">".repeat(60) + " deep\n");
        rejects("""
                content/lessons/01-first/lesson.md:9:1: the text is nested more than 50 deep here. Take quotes, lists, brackets, * and _ apart.
                   %s deep
                   ^
                1 mistake
                """.formatted(">".repeat(60)));
    }

    @ParameterizedTest
    @ValueSource(strings = {">*6000", "- *5000", "[*20000", "**a *3000", "![*3000"})
    void rejectsWhatWouldOverflow(String what) {
        String sign = what.substring(0, what.lastIndexOf('*'));
        int times = Integer.parseInt(what.substring(what.lastIndexOf('*') + 1));
        site.lesson("Fine.\n\n" + sign.repeat(times) + "\n\nFine.\n");
        String said = assertTimeout(SOON, site::problems);
        boolean fine = said.equals("0 mistakes\n");
        assertTrue(fine || said.startsWith("content/lessons/01-first/lesson.md:9:"), said.substring(0, Math.min(300, said.length())));
    }

    @Test
    void rejectsListsWithinLists() {
        StringBuilder lists = new StringBuilder();
        for (int depth = 0; depth < 2000; depth++) {
            lists.append("  ".repeat(depth)).append("- deeper\n");
        }
        site.lesson(lists.toString());
        String said = assertTimeout(SOON, site::problems);
        // two columns a list and two for the mark: more than 150 in the 76th line of the text
        assertEquals(
                "content/lessons/01-first/lesson.md:82:1: the text is nested more than 50 deep here. Take quotes, lists, brackets, * and _ apart.",
                said.lines().findFirst().orElse(""));
    }

    @Test
    void rejectsYamlWithinYaml() {
        site.lesson("```question\nkey: why\nask: " + "{a: ".repeat(20_000) + "\n```\n");
        String said = assertTimeout(SOON, site::problems);
        assertEquals(
                "content/lessons/01-first/lesson.md:9:1: the question block is nested too deeply here. Write it with fewer brackets, one key: text a line.",
                said.lines().findFirst().orElse(""));
    }

    /** 80 KB of them took 200 s. */
    @Test
    void rejectsBracketsWithoutEndSideBySide() {
        site.lesson("Fine.\n\nA " + "[^1]".repeat(20_000) + "\n");
        String said = assertTimeout(Duration.ofSeconds(2), site::problems);
        assertEquals(
                "content/lessons/01-first/lesson.md:9:6: more than 100 brackets stand side by side, these first. Put words between them.",
                said.lines().findFirst().orElse(""));
    }

    /** 40 KB of them took 30 s. */
    @Test
    void rejectsBracesThatAreLeftOpen() {
        site.lesson("Fine.\n\nA " + "{{".repeat(20_000) + "\n");
        String said = assertTimeout(Duration.ofSeconds(5), site::problems);
        assertEquals(
                "content/lessons/01-first/lesson.md:9:3: the name of a value is opened and not closed. Write {{name}} on one line.",
                said.lines().findFirst().orElse(""));
    }

    /** 200 KB of them took 48 s. */
    @Test
    void rejectsLinksThatAreLeftOpen() {
        site.lesson("Fine.\n\n" + "[a](".repeat(50_000) + "\n");
        String said = assertTimeout(Duration.ofSeconds(2), site::problems);
        assertEquals("""
                content/lessons/01-first/lesson.md:9:3: more than 20 links are opened and not closed, this one first. Close each with ), or write \\] for the bracket itself.""",
                said.lines().findFirst().orElse(""));
    }
}
