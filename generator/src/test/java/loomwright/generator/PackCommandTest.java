package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TimeZone;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code pack}: the same bytes twice, everything inside, and nothing of others written over. */
class PackCommandTest {
    @TempDir
    Path folder;

    private TestSite site;

    @BeforeEach
    void begin() throws IOException {
        site = new TestSite(folder.resolve("content"));
        site.write("sources.csv", Files.readString(Path.of("../content/sources.csv")) + "rod-book,the makers,The Rod Book,,published,,\n");
    }

    private int pack(String name) {
        return Loomwright.run(
                "pack", "--content", folder.resolve("content").toString(), "--parts", TestSite.PARTS.toString(), "--out", folder.resolve(name).toString());
    }

    @Test
    void theSameSiteGivesTheSameBytesInEveryTimeZone() throws IOException {
        assertEquals(0, pack("one.zip"));
        TimeZone home = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
            assertEquals(0, pack("two.zip"));
        } finally {
            TimeZone.setDefault(home);
        }
        assertArrayEquals(Files.readAllBytes(folder.resolve("one.zip")), Files.readAllBytes(folder.resolve("two.zip")));
        site.lesson("Other text.\n");
        assertEquals(0, pack("one.zip"), "a zip of ours may be written over");
        assertTrue(Files.mismatch(folder.resolve("one.zip"), folder.resolve("two.zip")) >= 0);
    }

    @Test
    void itHoldsTheSiteAndSaysHowToStartIt() throws IOException {
        assertEquals(0, pack("site.zip"));
        try (ZipFile zip = new ZipFile(folder.resolve("site.zip").toFile())) {
            for (String name : new String[] {"START.html", "loomwright/index.html", "loomwright/lessons/01-first.html", "loomwright/plain.css"}) {
                assertTrue(zip.getEntry(name) != null, name);
            }
            String readme = new String(zip.getInputStream(zip.getEntry("READ ME FIRST.txt")).readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(readme.contains("Open START.html with a double click."), readme);
            assertTrue(!readme.contains("{owner}"), readme);
        }
    }

    @Test
    void aFileOfOthersStays() throws IOException {
        Files.writeString(folder.resolve("letter.zip"), "mine");
        assertEquals(1, pack("letter.zip"));
        assertEquals("mine", Files.readString(folder.resolve("letter.zip")));
    }

    @Test
    void aMistakeLeavesTheOldZipAsItWas() throws IOException {
        assertEquals(0, pack("site.zip"));
        byte[] before = Files.readAllBytes(folder.resolve("site.zip"));
        site.lesson("It is {{scenario.nothing}}.\n");
        assertEquals(1, pack("site.zip"));
        assertArrayEquals(before, Files.readAllBytes(folder.resolve("site.zip")));
    }
}
