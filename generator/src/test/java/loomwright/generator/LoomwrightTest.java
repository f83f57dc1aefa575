package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command line: what it prints, what it writes, and with which number it ends. */
class LoomwrightTest {
    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final PrintStream realOut = System.out;
    private final PrintStream realErr = System.err;
    private TestSite site;

    @BeforeEach
    void begin() throws IOException {
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
        site = new TestSite(folder.resolve("content"));
        // the command line runs the real calculators, and their pages link to the real documents
        site.write("sources.csv", Files.readString(Path.of("../content/sources.csv")) + "rod-book,the makers,The Rod Book,,published,,\n");
    }

    @AfterEach
    void end() {
        System.setOut(realOut);
        System.setErr(realErr);
    }

    private int run(String command, String... more) {
        String[] arguments = Stream.concat(
                        Stream.of(command, "--content", folder.resolve("content").toString(), "--parts", TestSite.PARTS.toString()),
                        Stream.of(more))
                .toArray(String[]::new);
        return Loomwright.run(arguments);
    }

    private int build() {
        return run("build", "--out", folder.resolve("site").toString());
    }

    private Map<String, String> written() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> tree = Files.walk(folder.resolve("site"))) {
            for (Path file : tree.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return files;
    }

    @Test
    void buildsASite() throws IOException {
        assertEquals(0, build(), () -> err.toString(StandardCharsets.UTF_8));
        assertTrue(Files.readString(folder.resolve("site/lessons/01-first.html")).contains("Some text."));
        assertTrue(Files.exists(folder.resolve("site/lunr.js")));
        assertTrue(Files.exists(folder.resolve("site/plain.css")));
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("1 lesson with 0 worked examples and 0 pins"));
    }

    @Test
    void buildsTheSameSiteTwice() throws IOException {
        build();
        Map<String, String> first = written();
        build();
        assertEquals(first, written());
    }

    @Test
    void leavesTheOldSiteUntouchedIfAnythingIsWrong() throws IOException {
        build();
        Map<String, String> before = written();
        site.lesson("It is {{scenario.nothing}}.\n");
        assertEquals(1, build());
        assertEquals(before, written());
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("no figure of the scenario is called \"nothing\""));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("Nothing was written"));
        assertFalse(err.toString(StandardCharsets.UTF_8).contains("\tat "), "a stack trace for an author's mistake");
    }

    @Test
    void checksWithoutWriting() {
        assertEquals(0, run("proof"));
        assertFalse(Files.exists(folder.resolve("site")));
        site.lesson("A <b>bold</b> word.\n");
        assertEquals(1, run("proof"));
        assertTrue(err.toString(StandardCharsets.UTF_8).endsWith("2 mistakes\n"));
    }

    @Test
    void refusesAFolderThatHoldsOtherFiles() throws IOException {
        Files.createDirectories(folder.resolve("site"));
        Files.writeString(folder.resolve("site/letter.txt"), "mine");
        assertEquals(1, build());
        assertEquals("mine", Files.readString(folder.resolve("site/letter.txt")));
        assertEquals(
                folder.resolve("site") + " holds what this program did not write: letter.txt. Move it away, or name another folder with --out.\n",
                err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void saysInWordsThatAPlaceLiesBelowAFile() throws IOException {
        Path file = Files.writeString(folder.resolve("in-the-way"), "a file where a folder must go");
        for (String place : new String[] {"site", "deeper/site"}) {
            err.reset();
            assertEquals(2, run("build", "--out", file.resolve(place).toString()));
            assertEquals(
                    file + (place.equals("site") ? "" : "/deeper") + " cannot be made, since a file lies where a folder is needed. Name another place with --out.\n",
                    err.toString(StandardCharsets.UTF_8));
        }
        assertEquals("a file where a folder must go", Files.readString(file));
    }

    @Test
    void saysInWordsThatItRunsInAnotherFolder() {
        assertEquals(1, Loomwright.run("build", "--content", "no-such", "--out", folder.resolve("site").toString()));
        assertEquals(1, Loomwright.run("proof", "--content", folder.resolve("content").toString(), "--parts", "no-such"));
        assertEquals(
                "There is no folder no-such here. Run this in the folder of the project, or name the folder with --content.\n"
                        + "There is no folder no-such/templates here. Run this in the folder of the project, or name the folder with --parts.\n",
                err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void listsTheNamesAnAuthorCanUse() {
        assertEquals(0, Loomwright.run("names"));
        String names = out.toString(StandardCharsets.UTF_8);
        assertTrue(names.contains("given    route-length: "));
        assertTrue(names.contains("formula  voltage-drop/drop: "));
        assertTrue(names.contains("  supply-window: lowest, nominal, battery, highest"));
    }
}
