package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The zip for a stick, unpacked and opened from the disk. */
@ExtendWith(WithBrowser.class)
class PackIT {
    @TempDir
    Path folder;

    private Path pack(String name) throws IOException, InterruptedException {
        Path zip = folder.resolve(name);
        Process process = new ProcessBuilder("java", "-jar", "generator/target/loomwright.jar", "pack", "--out", zip.toString())
                .directory(Path.of("..").toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        return zip;
    }

    private Path unpack(Path zip) throws IOException {
        Path stick = folder.resolve("a stick");
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                Path file = stick.resolve(entry.getName());
                Files.createDirectories(file.getParent());
                Files.copy(in, file);
            }
        }
        return stick;
    }

    @Test
    void unpackedItRunsFromTheDisk(Browser browser) throws Exception {
        Path zip = pack("site.zip");
        assertEquals(-1, Files.mismatch(zip, pack("again.zip")), "the same content gives the same bytes");
        Path stick = unpack(zip);
        assertTrue(Files.readString(stick.resolve("READ ME FIRST.txt")).contains("START.html"));
        browser.open("about.html");
        browser.messages();
        browser.go(stick.resolve("START.html").toUri().toString());
        browser.until(() -> browser.driver().getCurrentUrl().endsWith("loomwright/index.html"));
        browser.find(".ways a").click();
        browser.go(stick.resolve("loomwright/lessons/08-voltage-drop.html").toUri().toString());
        browser.run("document.querySelector('a[href*=projector]').click()");
        browser.until(() -> browser.driver().getCurrentUrl().contains("/projector/"));
        browser.go(stick.resolve("loomwright/search.html").toUri().toString());
        browser.focus("#search-for");
        browser.press("ampacity");
        assertFalse(browser.text("#search-found").isBlank());
        assertEquals(List.of(), browser.messages());
        assertEquals(0L, browser.run("return document.querySelectorAll('link[rel=manifest]').length"), "nothing of a web server is asked for on a disk");
    }
}
