package loomwright.generator.build;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import loomwright.generator.problem.UserMistake;

/** Holds a place on the disk for one run: two that write to the same place at once would leave a mixture of both. */
public final class PlaceLock implements AutoCloseable {
    private final Path file;
    private final FileChannel channel;

    private PlaceLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Takes the place; the folder it lies in is made if need be.
     *
     * @throws UserMistake if another run has it
     */
    static PlaceLock of(Path place) {
        Path whole = place.toAbsolutePath().normalize();
        Path file = whole.resolveSibling("." + whole.getFileName() + ".lock");
        try {
            Files.createDirectories(whole.getParent());
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (isTaken(channel)) {
                channel.close();
                throw new UserMistake("Another run is writing to " + place + " at this moment. Wait until it has ended, then try again.");
            }
            return new PlaceLock(file, channel);
        } catch (IOException e) {
            throw new UncheckedIOException(of(e, place, file));
        }
    }

    /** What is refused is told of the place, for nobody has heard of the lock. */
    private static IOException of(IOException refused, Path place, Path lock) {
        if (!(refused instanceof FileSystemException at) || !lock.toString().equals(at.getFile())) {
            return refused;
        }
        return refused instanceof AccessDeniedException ? new AccessDeniedException(place.toString()) : new FileSystemException(place.toString(), null, at.getReason());
    }

    /** Does something that needs the place. */
    public static <T> T holding(Path place, Callable<T> work) throws Exception {
        PlaceLock lock = of(place);
        try {
            return work.call();
        } finally {
            lock.close();
        }
    }

    private static boolean isTaken(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() == null;
        } catch (OverlappingFileLockException inThisProgram) {
            return true;
        }
    }

    /** Gives the place back. The file goes first, while nobody else can have it. */
    @Override
    public void close() {
        try (channel) {
            Files.deleteIfExists(file);
        } catch (IOException left) {
            // a system that keeps open files from being deleted leaves an empty file, which is in nobody's way
        }
    }
}
