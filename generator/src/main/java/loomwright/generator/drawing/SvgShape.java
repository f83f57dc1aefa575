package loomwright.generator.drawing;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The elements a drawing may be made of, their attributes, and the classes that give them their look. */
final class SvgShape {
    /** What each element needs; a drawing has nothing else in it. */
    static final Map<String, Set<String>> NEEDED = Map.of(
            "svg", Set.of("viewBox"),
            "title", Set.of(),
            "desc", Set.of(),
            "g", Set.of(),
            "path", Set.of("d", "class"),
            "rect", Set.of("x", "y", "width", "height", "class"),
            "circle", Set.of("cx", "cy", "r", "class"),
            "line", Set.of("x1", "y1", "x2", "y2", "class"),
            "text", Set.of("x", "y"));

    private static final Map<String, Set<String>> OPTIONAL = Map.of(
            "g", Set.of("class", "transform"),
            "path", Set.of("stroke-dasharray"),
            "line", Set.of("stroke-dasharray"),
            "rect", Set.of("rx", "stroke-dasharray"),
            "circle", Set.of("stroke-dasharray"),
            "text", Set.of("text-anchor", "class"));

    static final List<String> LINES = List.of("ink", "accent", "faint", "plus", "minus", "warn", "solid", "shade", "hatch", "paper");
    static final List<String> LETTERS = List.of("small", "strong", "accent");

    private SvgShape() {}

    static boolean takes(String element, String attribute) {
        return NEEDED.get(element).contains(attribute) || OPTIONAL.getOrDefault(element, Set.of()).contains(attribute);
    }

    static List<String> attributes(String element) {
        return Stream.concat(NEEDED.get(element).stream(), OPTIONAL.getOrDefault(element, Set.of()).stream()).sorted().toList();
    }

    static List<String> classes(String element) {
        return element.equals("text") ? LETTERS : LINES;
    }
}
