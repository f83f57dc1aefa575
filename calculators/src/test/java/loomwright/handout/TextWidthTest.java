package loomwright.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines counted by hand, ten letters to a line. */
class TextWidthTest {
    @ParameterizedTest(name = "{1}: {0}")
    @CsvSource({
        "'', 1",
        "fuse, 1",
        "fuse panel, 1",
        "fuse panels, 2",
        "a fuse panel, 2",
        "ten letter, 1",
        "ten letter ten letter, 2",
        "ten letter ten letters, 3",
        "conductors, 1",
        "conductorss, 2",
        "conductorsconductors, 2",
        "conductorsconductorss, 3",
        "conductorss fuse at, 2",
        "conductorss fuses at, 2",
        "conductorss fuse link, 3"
    })
    void aTextIsBrokenAtItsBlanksAndALongWordInside(String text, int lines) {
        assertEquals(lines, TextWidth.lines(text, 10));
    }
}
