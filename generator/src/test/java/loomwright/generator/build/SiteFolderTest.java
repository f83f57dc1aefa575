package loomwright.generator.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SiteFolderTest {
    @TempDir
    Path folder;

    private Path site() {
        return folder.resolve("site");
    }

    private static void write(Path target, String page) {
        try (SiteFolder site = new SiteFolder(target)) {
            site.put("lessons/a.html", page.getBytes());
            site.finish();
        }
    }

    private List<String> leftBeside() throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void showsTheOldSiteUntilTheNewOneIsFinished() throws IOException {
        write(site(), "old");
        try (SiteFolder site = new SiteFolder(site())) {
            site.put("lessons/a.html", "new".getBytes());
            assertEquals("old", Files.readString(site().resolve("lessons/a.html")));
            site.finish();
        }
        assertEquals("new", Files.readString(site().resolve("lessons/a.html")));
        assertEquals(List.of("site"), leftBeside());
    }

    @Test
    void leavesTheOldSiteIfTheNewOneIsNotFinished() throws IOException {
        write(site(), "old");
        try (SiteFolder site = new SiteFolder(site())) {
            site.put("lessons/a.html", "half".getBytes());
        }
        assertEquals("old", Files.readString(site().resolve("lessons/a.html")));
        assertEquals(List.of("site"), leftBeside());
    }

    @Test
    void dropsPagesThatAreGone() {
        write(site(), "old");
        try (SiteFolder site = new SiteFolder(site())) {
            site.put("lessons/b.html", "new".getBytes());
            site.finish();
        }
        assertFalse(Files.exists(site().resolve("lessons/a.html")));
    }

    @Test
    void clearsWhatABrokenRunLeft() throws IOException {
        Files.createDirectories(folder.resolve(".site.new/lessons"));
        Files.writeString(folder.resolve(".site.new/lessons/stale.html"), "stale");
        write(site(), "new");
        assertFalse(Files.exists(site().resolve("lessons/stale.html")));
        assertEquals(List.of("site"), leftBeside());
    }

    @Test
    void knowsItsOwnFoldersFromOthers() throws IOException {
        assertFalse(SiteFolder.holdsOther(site()));
        Files.createDirectories(site());
        assertFalse(SiteFolder.holdsOther(site()));
        Files.writeString(site().resolve("letter.txt"), "mine");
        assertTrue(SiteFolder.holdsOther(site()));
        write(folder.resolve("other"), "page");
        assertFalse(SiteFolder.holdsOther(folder.resolve("other")));
    }
}
