package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class PictureTest {
    private static final Picture PICTURE = new Picture(
            "Amperes & volts",
            "Less < more > \"none\"",
            new Canvas().text(10, 20, Anchor.END, Lettering.SMALL, "a < b & c").line(Style.PLUS, 0, 0, 10.5, -3),
            320,
            100.5);

    @Test
    void isAnImageNamedByItsTitleAndDescription() {
        DrawnSvg svg = new DrawnSvg(PICTURE.svg("drop"));
        assertEquals("img", svg.attribute("role"));
        assertEquals("drop-t", svg.attribute("aria-labelledby"));
        assertEquals("drop-d", svg.attribute("aria-describedby"));
        assertEquals(List.of("drop-t", "drop-d"), svg.ids());
        assertEquals("0 0 320 100.5", svg.attribute("viewBox"));
    }

    @Test
    void escapesWords() {
        DrawnSvg svg = new DrawnSvg(PICTURE.svg("drop"));
        assertEquals("Amperes & volts", svg.words("title"));
        assertEquals("Less < more > \"none\"", svg.words("desc"));
        assertEquals("a < b & c", svg.words("text"));
    }

    @Test
    void takesTheWordsOfTheLesson() {
        DrawnSvg svg = new DrawnSvg(PICTURE.named("One", "Two").svg("drop"));
        assertEquals("One", svg.words("title"));
        assertEquals("Two", svg.words("desc"));
    }

    @Test
    void writesLinesAsPathsWithAClass() {
        assertTrue(PICTURE.body().contains("<path class=\"plus\" d=\"M0 0L10.5 -3\"/>"), PICTURE.body());
    }
}
