package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How long a lesson is said to take, and which examples belong to that time. */
class LessonTimeTest {
    /** Enough words to fill minutes by themselves: 180 in a story. */
    private static final String STORY = "word ".repeat(180).strip();

    @TempDir
    Path folder;

    private TestSite site;

    @BeforeEach
    void begin() {
        site = new TestSite(folder);
    }

    private static String example(String key, String story, String further) {
        return """

                ```example
                key: %s
                title: A heater
                story: %s
                calculator: resistor-current
                given: { voltage: 12 V, resistance: 4 Ω }
                %spins:
                  - { result: current, expect: 3 A, tolerance: 0.05 A, kind: printed, source: rod-book }
                ```
                """.formatted(key, story, further);
    }

    private String page() {
        return site.files().get("lessons/01-first.html");
    }

    private void says(int minutes) {
        assertTrue(page().contains("You can do it. " + minutes + " minutes."), () -> page().lines().filter(line -> line.contains("minutes")).toList().toString());
    }

    /** The card of the lesson has ten words, so 350 more make two whole minutes, and 351 begin a third. */
    @Test
    void isItsWordsAt180AMinuteRoundedUp() {
        site.lesson("word ".repeat(350) + "\n");
        says(2);
        site.lesson("word ".repeat(351) + "\n");
        says(3);
    }

    @Test
    void countsCautionsTasksCaptionsAndQuestionsButNoAddressesAndKeys() {
        site.lesson("""
                %s

                ```caution
                title: Mind [this](word:ohm)
                Five words stand right here.
                ```

                ```question
                key: four
                ask: Which of the four?
                answer: The last of them.
                ```
                """.formatted("word ".repeat(180 - 10 - 2 - 5 - 8)));
        says(1);
        site.lesson(site.read(TestSite.LESSON).substring(TestSite.FRONT.length()) + "\nOne more.\n");
        says(2);
    }

    @Test
    void countsTheStoriesOfTheFirstTwoExamplesAlone() {
        String two = "## Heat\n" + example("one", STORY, "") + example("two", STORY, "");
        site.lesson(two);
        String before = page().replaceAll("(?s).*You can do it. (\\d+) minutes.*", "$1");
        assertTrue(Integer.parseInt(before) > 2, before);
        site.lesson(two + example("three", STORY, "") + example("four", STORY, ""));
        says(Integer.parseInt(before));
    }

    @Test
    void takesTheAuthorsWordForWhatIsFurther() {
        site.lesson("## Heat\n" + example("one", "Cold.", "further: \"yes\"\n") + example("two", "Cold.", "") + example("three", "Cold.", "")
                + example("four", "Cold.", "further: \"no\"\n"));
        assertEquals(List.of("one", "three"), Jsoup.parse(page()).select("section[data-further]").eachAttr("id"));
        assertEquals(List.of("Further example", "Worked example", "Further example", "Worked example"),
                Jsoup.parse(page()).select("details.further > summary .label, section.example > .label").eachText());
    }

    @Test
    void refusesAnotherWord() {
        site.lesson("## Heat\n" + example("one", "Cold.", "further: perhaps\n"));
        assertEquals("""
                content/lessons/01-first/lesson.md:15:10: "further" must be "yes" or "no" but is "perhaps". Write further: "yes" for an example that can be passed over, further: "no" for one that cannot.
                   further: perhaps
                            ^
                1 mistake
                """, site.problems());
    }
}
