package loomwright.generator;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loomwright.generator.build.Parts;
import loomwright.generator.build.SiteBuild;

/** A small site that a test writes and builds. Every file it begins with is sound. */
public final class TestSite {
    public static final Path PARTS = Path.of("src/test/resources/parts");
    public static final String LESSON = "lessons/01-first/lesson.md";

    /** The card of a lesson. */
    public static final String CARD = "card: [Keep one., Keep two., Keep three., Keep four., Keep five.]";

    /** The front matter of a lesson; its text begins in line 7. */
    public static final String FRONT = """
            ---
            title: First
            goal: do it
            card: [Keep one., Keep two., Keep three., Keep four., Keep five.]
            summary: A first lesson.
            ---
            """;

    private final Path folder;
    private Path parts = PARTS;

    public TestSite(Path folder) {
        this.folder = folder;
        write("sources.csv", """
                key,issuer,document,edition,standing,seen,note
                rod-book,The rod makers,The Rod Book,2001,published,the book,
                common-practice,the trade,Trade practice,,common-practice,,
                from-memory,none,Figure from memory,,from-memory,,
                """);
        write("tables/rods.csv", """
                # title: Resistance of rods
                # source: rod-book
                size (mm²),resistance (mΩ/m),standing
                1,18,
                2,9,
                4,4.5,from-memory
                """);
        write("glossary.md", """
                ## ohm

                The unit of resistance.
                """);
        write("scenario.yaml", """
                bench-route: {value: "4.2 m", says: "route to the bench"}
                """);
        lesson("Some text.\n");
    }

    /** Writes a file of the content folder. */
    public TestSite write(String path, String text) {
        return write(path, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes a file of the content folder that is no text. */
    public TestSite write(String path, byte[] bytes) {
        try {
            Path file = folder.resolve(path);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** Writes the one lesson; its text begins in line 7. */
    public TestSite lesson(String body) {
        return write(LESSON, FRONT + body);
    }

    public String read(String path) {
        try {
            return Files.readString(folder.resolve(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Takes templates from another folder. */
    public TestSite parts(Path other) {
        parts = other;
        return this;
    }

    public SiteBuild build() {
        return new SiteBuild(folder, new Parts(parts, List.of()), TestCalculators.all());
    }

    /** The files of the site by address. */
    public Map<String, String> files() {
        Map<String, String> files = new TreeMap<>();
        build().run((address, bytes) -> files.put(address, new String(bytes, StandardCharsets.UTF_8)));
        return files;
    }

    /** Every problem of a run as it is printed, with the folder of the test called {@code content}. */
    public String problems() {
        String text = build().run((address, bytes) -> { }).problems().text();
        return text.replace(folder.toString().replace('\\', '/'), "content");
    }
}
