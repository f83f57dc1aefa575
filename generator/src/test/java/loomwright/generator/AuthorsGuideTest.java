package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import loomwright.catalogue.Catalogue;
import loomwright.generator.build.Parts;
import loomwright.generator.build.SiteBuild;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Builds every piece of text that the author's guide shows, as it stands. */
class AuthorsGuideTest {
    private static final Path CONTENT = Path.of("../content");
    private static final Pattern LESSON_PART = Pattern.compile("(?ms)^````markdown\n(.*?)^````$");
    private static final Pattern DRAWING = Pattern.compile("(?ms)^````text\n(<svg.*?)^````$");
    private static final Pattern FENCE = Pattern.compile("(?m)^```([a-z]+)");

    @TempDir
    Path folder;

    private String guide;

    @BeforeEach
    void readGuide() throws IOException {
        guide = Files.readString(CONTENT.resolve("pages/authors-guide.md"));
    }

    private List<String> lessonParts() {
        List<String> parts = new ArrayList<>();
        Matcher matcher = LESSON_PART.matcher(guide.substring(0, guide.indexOf("## A club's own lessons")));
        while (matcher.find()) {
            parts.add(matcher.group(1));
        }
        return parts;
    }

    /** The lesson stands beside the course's own sources, tables, words and lesson 8, which its text links to. */
    private Map<String, String> build(String lesson) throws IOException {
        for (String name : List.of("sources.csv", "glossary.md", "scenario.yaml")) {
            Files.copy(CONTENT.resolve(name), folder.resolve(name));
        }
        Files.createDirectories(folder.resolve("tables"));
        Files.copy(CONTENT.resolve("tables/awg-copper-20c.csv"), folder.resolve("tables/awg-copper-20c.csv"));
        Files.createDirectories(folder.resolve("circuits"));
        Files.copy(CONTENT.resolve("circuits/reedmere-trailer.json"), folder.resolve("circuits/reedmere-trailer.json"));
        Matcher drawing = DRAWING.matcher(guide);
        assertTrue(drawing.find(), "the guide shows no drawing");
        write("drawings/guide-fuse.svg", drawing.group(1));
        Files.createDirectories(folder.resolve("pictures"));
        ImageIO.write(new BufferedImage(600, 400, BufferedImage.TYPE_INT_RGB), "jpg", folder.resolve("pictures/guide-bench.jpg").toFile());
        write("lessons/08-voltage-drop/lesson.md", TestSite.FRONT + "Text.\n");
        write("lessons/99-guide/lesson.md", lesson);
        Map<String, String> files = new TreeMap<>();
        SiteBuild build = new SiteBuild(folder, new Parts(Path.of("../site/src/main"), List.of()), Catalogue.all());
        SiteBuild.Outcome outcome =
                build.run((address, bytes) -> files.put(address, new String(bytes, StandardCharsets.UTF_8)));
        List<String> ours = outcome.problems().sorted().stream()
                .filter(problem -> problem.file().endsWith("99-guide/lesson.md") || problem.file().endsWith(".svg"))
                .map(problem -> problem.text())
                .toList();
        assertEquals(List.of(), ours);
        return files;
    }

    private void write(String path, String text) throws IOException {
        Path file = folder.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    @Test
    void itsPiecesMakeALessonWithoutAnyProblem() throws IOException {
        String page = build(String.join("\n", lessonParts())).get("lessons/99-guide.html");
        assertTrue(page.contains("0.5107"), "the example is not in the page");
        assertTrue(page.contains("fuse-link 15\u00a0A</text>"), "the drawing of the guide is not in the page");
        assertTrue(page.contains("src=\"../pictures/guide-bench.jpg\""), "the photo of the guide is not in the page");
    }

    @Test
    void itShowsEveryBlock() {
        String all = String.join("\n", lessonParts());
        List<String> shown = new ArrayList<>();
        Matcher matcher = FENCE.matcher(all);
        while (matcher.find()) {
            shown.add(matcher.group(1));
        }
        for (String kind : List.of("example", "caution", "task", "figure", "formula", "question", "table", "circuit")) {
            assertTrue(shown.contains(kind), "no piece shows the block " + kind);
        }
    }

    @Test
    void itsCommandsExist() {
        for (String line : guide.lines().filter(each -> each.startsWith("java -jar")).toList()) {
            String command = line.split(" ")[3];
            assertEquals(0, Loomwright.run(command, "--help"), line);
        }
    }
}
