package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.stream.Stream;
import loomwright.generator.check.Reading;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every lesson can be read in one sitting, and by a fifteen-year-old. Needs no browser. */
class LessonsReadingIT {
    private static final int FEWEST_WORDS = 900;
    /** Thirteen minutes at 180 words a minute; the rest of the half hour belongs to the examples and the task. */
    private static final int MOST_WORDS = 2300;
    /** Fairly easy: plain English for a reader of thirteen or fourteen. */
    private static final double LEAST_EASE = 70;

    @TestFactory
    Stream<DynamicTest> areShortAndPlain() {
        return BuiltSite.pages().stream()
                .filter(page -> page.startsWith("lessons/"))
                .map(page -> DynamicTest.dynamicTest(page, () -> {
                    Reading reading = read(page);
                    assertTrue(reading.words() >= FEWEST_WORDS && reading.words() <= MOST_WORDS, reading.words() + " words");
                    assertTrue(reading.ease() >= LEAST_EASE, "reading ease " + reading.ease());
                }));
    }

    @Test
    void aCheckOnInventedFiguresSaysSo() throws IOException {
        Document lesson = Jsoup.parse(Files.readString(BuiltSite.file("lessons/17-the-trailer.html")));
        for (Element example : lesson.select("section.example:has(.given):has(.finding)")) {
            Element story = example.selectFirst(".story").clone();
            story.select(".source").remove();
            boolean madeUp = story.text().contains("invented") || example.select(".pins .source").text().contains("invented");
            assertEquals(madeUp, example.select(".story > .source").text().contains("invented"), example.id());
        }
        assertEquals(1, lesson.select("#can-the-main-fuse-break-it .story > .source").size());
    }

    private static Reading read(String page) throws IOException {
        return Reading.of(Files.readString(BuiltSite.file(page)));
    }
}
