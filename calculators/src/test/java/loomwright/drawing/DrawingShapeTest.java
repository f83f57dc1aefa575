package loomwright.drawing;

import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import loomwright.shape.Golden;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Every drawing of the lessons has the marks, words and places that someone last looked at. The numbers in its words and in its table are
 * masked: those are worked by hand in the tests of figures.
 */
class DrawingShapeTest {
    private static final String HEAD = "values of the lesson: ";

    @TestFactory
    Stream<DynamicTest> isAsLastLookedAt() {
        return Drawings.names().stream().map(name -> DynamicTest.dynamicTest(name, () -> {
            if (Golden.isRewritten()) {
                LessonFigures.Figure figure =
                        LessonFigures.all().stream().filter(each -> each.drawing().equals(name)).findFirst().orElseThrow();
                Golden.write("drawing/" + name + ".txt", text(name, new TreeMap<>(figure.values())));
            }
            String head = Golden.read("drawing/" + name + ".txt").lines().findFirst().orElseThrow();
            TreeMap<String, String> values = new TreeMap<>();
            for (String pair : head.substring(HEAD.length()).split(";")) {
                if (!pair.isBlank()) {
                    values.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1));
                }
            }
            Golden.assertIs("drawing/" + name + ".txt", text(name, values));
        }));
    }

    private static String text(String name, TreeMap<String, String> values) {
        StringBuilder head = new StringBuilder(HEAD);
        values.forEach((key, value) -> head.append(key).append('=').append(value).append(';'));
        var picture = Drawings.draw(name, values);
        return head + "\n" + Golden.maskedMarkup(picture.svg("key")) + Golden.masked(new TreeSet<>(picture.figures().heads()).toString())
                + " " + picture.figures().rows().size() + " rows\n";
    }
}
