package loomwright.generator.problem;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.ReadOnlyFileSystemException;

/** What went wrong outside the texts of an author, in plain words. */
public final class Mishap {
    private Mishap() {}

    /** The sentence to print. */
    public static String words(Throwable thrown) {
        Throwable cause = thrown instanceof UncheckedIOException unchecked ? unchecked.getCause() : thrown;
        if (cause instanceof ReadOnlyFileSystemException) {
            return "The disk can only be read. Name another place with --out.";
        }
        if (cause instanceof FileSystemException at) {
            return words(at);
        }
        if (cause instanceof IOException) {
            return said(cause).contains("No space left") ? full("The files") : "Reading or writing failed: " + said(cause) + ".";
        }
        if (cause instanceof OutOfMemoryError) {
            return "There is not enough memory for this. Give the program more, such as 2 GB: java -Xmx2g -jar loomwright.jar ...";
        }
        return "This is a fault of the program, not of your text: " + cause
                + ". Please tell those who keep it; with -Dloomwright.trace=true after \"java\" it says where.";
    }

    private static String words(FileSystemException at) {
        String file = at.getFile();
        String reason = at.getReason() == null ? "" : at.getReason();
        if (reason.contains("No space left") || reason.contains("Disk quota")) {
            return full(file);
        }
        if (reason.contains("Read-only")) {
            return file + " lies on a disk that can only be read. Name another place with --out.";
        }
        if (reason.contains("Not a directory") || at instanceof FileAlreadyExistsException) {
            return file + " cannot be made, since a file lies where a folder is needed. Name another place with --out.";
        }
        if (at instanceof AccessDeniedException) {
            return file + " may not be read or written by you. Change its permissions, or name another place.";
        }
        if (at instanceof NoSuchFileException) {
            return file + " is not there any more. Was it moved or deleted meanwhile? Try again.";
        }
        return file + " cannot be read or written" + (reason.isEmpty() ? "" : ": " + reason) + ".";
    }

    private static String full(String what) {
        return what + " could not be written: the disk is full. Make room, or name another place with --out. What was there before is as it was.";
    }

    private static String said(Throwable cause) {
        return cause.getMessage() == null ? cause.toString() : cause.getMessage();
    }
}
