package loomwright.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import loomwright.generator.content.ContentReader;
import loomwright.generator.problem.Problems;
import loomwright.picture.Picture;

/** The drawings of the course. */
final class Drawn {
    static final Drawings ALL = all();

    private Drawn() {}

    static Picture draw(String name, Map<String, String> values) {
        return ALL.draw(name, values);
    }

    private static Drawings all() {
        Problems problems = new Problems();
        Drawings drawings = Drawings.with(ContentReader.drawings(Path.of("../content"), null, problems), problems);
        assertEquals(List.of(), problems.sorted());
        return drawings;
    }
}
