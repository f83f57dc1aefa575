package loomwright.generator.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;

/** What the machine can refuse, in words. The reasons are those of Linux. */
class MishapTest {
    private static String words(IOException refused) {
        return Mishap.words(new UncheckedIOException(refused));
    }

    @Test
    void aFullDisk() {
        String said = "site/a.html could not be written: the disk is full. Make room, or name another place with --out. What was there before is as it was.";
        assertEquals(said, words(new FileSystemException("site/a.html", null, "No space left on device")));
        assertEquals(said.replace("site/a.html", "The files"), words(new IOException("No space left on device")));
    }

    @Test
    void aPlaceThatCanOnlyBeRead() {
        assertEquals(
                "site lies on a disk that can only be read. Name another place with --out.",
                words(new FileSystemException("site", null, "Read-only file system")));
        assertEquals("site may not be read or written by you. Change its permissions, or name another place.", words(new AccessDeniedException("site")));
    }

    @Test
    void aFileThatVanished() {
        assertEquals("a.md is not there any more. Was it moved or deleted meanwhile? Try again.", words(new NoSuchFileException("a.md")));
    }

    @Test
    void aFaultOfOursSaysSo() {
        String said = Mishap.words(new IllegalStateException("seven"));
        assertTrue(said.startsWith("This is a fault of the program, not of your text: java.lang.IllegalStateException: seven."), said);
    }
}
