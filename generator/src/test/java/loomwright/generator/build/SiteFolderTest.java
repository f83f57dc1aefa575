package loomwright.generator.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import loomwright.generator.problem.UserMistake;
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
    void refusesToReplaceAPageThatSomebodyChanged() throws IOException {
        write(site(), "old");
        Files.writeString(site().resolve("lessons/a.html"), "old, with my words");
        UserMistake mistake = assertThrows(UserMistake.class, () -> write(site(), "new"));
        assertEquals(
                site() + " holds what this program did not write: lessons/a.html (changed by hand). Move it away, or name another folder with --out.",
                mistake.getMessage());
        assertEquals("old, with my words", Files.readString(site().resolve("lessons/a.html")));
        assertEquals(List.of("site"), leftBeside());
    }

    /** The list as version 1.0.0 first kept it: addresses alone. */
    @Test
    void takesTheListOfAnOlderProgram() throws IOException {
        write(site(), "old");
        Files.writeString(site().resolve(".loomwright-site"), "lessons/a.html\n");
        write(site(), "new");
        assertEquals("new", Files.readString(site().resolve("lessons/a.html")));
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
    void clearsWhatABrokenRunLeftAndNothingElse() throws IOException {
        Files.createDirectories(folder.resolve(".site.123/new/lessons"));
        Files.writeString(folder.resolve(".site.123/.loomwright-at-work"), "");
        Files.writeString(folder.resolve(".site.123/new/lessons/stale.html"), "stale");
        Files.createDirectories(folder.resolve(".site.new"));
        Files.writeString(folder.resolve(".site.new/letter.txt"), "mine");
        write(site(), "new");
        assertEquals(List.of(".site.new", "site"), leftBeside());
        assertEquals("mine", Files.readString(folder.resolve(".site.new/letter.txt")));
    }

    @Test
    void putsTheOldSiteBackIfTheMachineStoppedBetweenTheTwo() throws IOException {
        write(site(), "old");
        Files.createDirectories(folder.resolve(".site.123"));
        Files.writeString(folder.resolve(".site.123/.loomwright-at-work"), "");
        Files.move(site(), folder.resolve(".site.123/old"));
        try (SiteFolder next = new SiteFolder(site())) {
            assertEquals("old", Files.readString(site().resolve("lessons/a.html")));
            next.put("lessons/a.html", "half".getBytes());
        }
        assertEquals("old", Files.readString(site().resolve("lessons/a.html")));
        assertEquals(List.of("site"), leftBeside());
    }

    @Test
    void refusesFilesOfOthersByNameAndLeavesThem() throws IOException {
        Files.createDirectories(site());
        write(site(), "old");
        Files.createDirectories(site().resolve("photos"));
        Files.writeString(site().resolve("photos/p.jpg"), "mine");
        Files.writeString(site().resolve("letter.txt"), "mine");
        String said = assertThrows(UserMistake.class, () -> write(site(), "new")).getMessage();
        assertEquals(
                site() + " holds what this program did not write: letter.txt, photos/p.jpg. Move it away, or name another folder with --out.", said);
        assertEquals("mine", Files.readString(site().resolve("photos/p.jpg")));
        assertEquals("old", Files.readString(site().resolve("lessons/a.html")));
        assertEquals(List.of("site"), leftBeside());
    }

    @Test
    void namesFiveFilesOfOthersAndCountsTheRest() throws IOException {
        Files.createDirectories(site());
        for (int i = 1; i <= 7; i++) {
            Files.writeString(site().resolve(i + ".txt"), "mine");
        }
        String said = assertThrows(UserMistake.class, () -> write(site(), "new")).getMessage();
        assertTrue(said.contains(": 1.txt, 2.txt, 3.txt, 4.txt, 5.txt and 2 more. "), said);
    }

    @Test
    void keepsAFileThatCameWhileTheSiteWasBuilt() throws IOException {
        write(site(), "old");
        try (SiteFolder next = new SiteFolder(site())) {
            next.put("lessons/a.html", "new".getBytes());
            Files.writeString(site().resolve("letter.txt"), "mine");
            assertThrows(UserMistake.class, next::finish);
        }
        assertEquals("mine", Files.readString(site().resolve("letter.txt")));
        assertEquals("old", Files.readString(site().resolve("lessons/a.html")));
        assertEquals(List.of("site"), leftBeside());
    }

    @Test
    void refusesASecondRunWhileTheFirstIsAtWork() throws IOException {
        try (SiteFolder first = new SiteFolder(site())) {
            first.put("lessons/a.html", "first".getBytes());
            String said = assertThrows(UserMistake.class, () -> write(site(), "second")).getMessage();
            assertEquals("Another run is writing to " + site() + " at this moment. Wait until it has ended, then try again.", said);
            first.finish();
        }
        assertEquals("first", Files.readString(site().resolve("lessons/a.html")));
        assertEquals(List.of("site"), leftBeside());
        write(site(), "third");
        assertEquals("third", Files.readString(site().resolve("lessons/a.html")));
    }

    /** The list in the folder may have been tampered with. */
    @Test
    void removesNothingOutsideTheFolder() throws IOException {
        write(site(), "old");
        Files.writeString(folder.resolve("letter.txt"), "mine");
        Files.writeString(site().resolve(".loomwright-site"), "lessons/a.html\n../letter.txt\n");
        write(site(), "new");
        assertEquals("mine", Files.readString(folder.resolve("letter.txt")));
        assertEquals("new", Files.readString(site().resolve("lessons/a.html")));
    }
}
