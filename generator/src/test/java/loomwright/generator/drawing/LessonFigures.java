package loomwright.generator.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The figure blocks of the lessons and pages, read just far enough to draw them. */
final class LessonFigures {
    private static final Path CONTENT = Path.of("../content");

    private LessonFigures() {}

    /** A figure block: where it stands, its key, its drawing and the values it gives. */
    record Figure(String lesson, String key, String drawing, Map<String, String> values) {
        @Override
        public String toString() {
            return lesson + " " + drawing;
        }
    }

    static List<Figure> all() {
        List<Figure> figures = new ArrayList<>();
        try (Stream<Path> files = Files.walk(CONTENT)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".md")).sorted().toList()) {
                if (!file.endsWith("authors-guide.md")) {
                    read(CONTENT.relativize(file).toString(), Files.readAllLines(file), figures);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return figures;
    }

    private static void read(String lesson, List<String> lines, List<Figure> figures) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).equals("```figure")) {
                int end = lines.subList(i + 1, lines.size()).indexOf("```") + i + 1;
                figures.add(figure(lesson, lines.subList(i + 1, end)));
                i = end;
            }
        }
    }

    private static Figure figure(String lesson, List<String> lines) {
        Map<String, String> top = new LinkedHashMap<>();
        Map<String, String> values = new LinkedHashMap<>();
        for (String line : lines) {
            int colon = line.indexOf(':');
            if (colon < 0) {
                continue;
            }
            boolean inValues = line.startsWith("  ") && top.containsKey("values");
            (inValues ? values : top).put(line.substring(0, colon).strip(), line.substring(colon + 1).strip().replace("\"", ""));
        }
        return new Figure(lesson, top.get("key"), top.get("drawing"), values);
    }
}
