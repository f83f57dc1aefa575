package loomwright.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import loomwright.picture.Picture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DrawingsTest {
    static List<LessonFigures.Figure> drawn() {
        return LessonFigures.all().stream().filter(figure -> Drawn.ALL.has(figure.drawing())).toList();
    }

    private static DrawnSvg svg(LessonFigures.Figure figure) {
        return new DrawnSvg(Drawn.ALL.draw(figure.drawing(), figure.values()).svg(figure.key()));
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void hasATitleAndADescription(LessonFigures.Figure figure) {
        DrawnSvg svg = svg(figure);
        assertTrue(svg.words("title").length() > 8, svg.words("title"));
        assertTrue(svg.words("desc").length() > 40, svg.words("desc"));
        assertEquals(List.of(figure.key() + "-t", figure.key() + "-d"), svg.ids());
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void keepsEveryTextReadable(LessonFigures.Figure figure) {
        assertEquals(List.of(), svg(figure).textFaults());
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void fitsThePhone(LessonFigures.Figure figure) {
        assertTrue(svg(figure).width() <= 360);
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void hasOneCellForEachHeadOfItsTable(LessonFigures.Figure figure) {
        Picture picture = Drawn.ALL.draw(figure.drawing(), figure.values());
        for (List<String> row : picture.figures().rows()) {
            assertEquals(picture.figures().heads().size(), row.size(), row.toString());
        }
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void namesAnUnknownValue(LessonFigures.Figure figure) {
        Map<String, String> values = new TreeMap<>(figure.values());
        values.put("colour", "red");
        String message = message(figure.drawing(), values);
        assertTrue(message.contains("no value called \u201ccolour\u201d"), message);
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void namesAMissingAndABadValue(LessonFigures.Figure figure) {
        for (String key : figure.values().keySet()) {
            Map<String, String> without = new TreeMap<>(figure.values());
            without.remove(key);
            assertTrue(message(figure.drawing(), without).contains("\u201c" + key + "\u201d"));
            Map<String, String> bad = new TreeMap<>(figure.values());
            bad.put(key, "seven gallons");
            String message = message(figure.drawing(), bad);
            assertTrue(message.contains(key) && message.contains("seven gallons"), message);
        }
    }

    @Test
    void namesAreUnique() {
        assertEquals(Drawn.ALL.names().size(), new HashSet<>(Drawn.ALL.names()).size());
        assertFalse(Drawn.ALL.has("no-such-drawing"));
        assertEquals("There is no drawing called \u201cno-such-drawing\u201d.", message("no-such-drawing", Map.of()));
    }

    @Test
    void everyDrawingIsShown() {
        TreeSet<String> shown = new TreeSet<>();
        LessonFigures.all().forEach(figure -> shown.add(figure.drawing()));
        assertTrue(shown.containsAll(Drawn.ALL.names()), "drawn but never shown: " + Drawn.ALL.names() + " against " + shown);
    }

    private static String message(String drawing, Map<String, String> values) {
        return assertThrows(IllegalArgumentException.class, () -> Drawn.ALL.draw(drawing, values)).getMessage();
    }
}
