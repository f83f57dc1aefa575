package loomwright.generator.preview;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Waits for a change in any of several folders and what is below them. A folder may go and come back. */
final class FolderWatch implements AutoCloseable {
    /** An editor writes a file in several steps; the build waits until it has been quiet for this long. */
    private static final int QUIET_MILLISECONDS = 40;
    /** No event tells that a folder of ours came back, so it is looked for. */
    private static final int LOOK_AGAIN_MILLISECONDS = 500;

    private final List<Path> folders;
    private final WatchService watch;
    private List<Path> there = List.of();
    private WatchKey first;

    FolderWatch(List<Path> folders) {
        this.folders = folders;
        try {
            this.watch = FileSystems.getDefault().newWatchService();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        register();
    }

    /** Whether {@link #awaitChange} has something to tell: a change, or that the watch was closed. */
    boolean hasChanged() {
        try {
            if (first == null) {
                first = watch.poll();
            }
            return first != null;
        } catch (ClosedWatchServiceException e) {
            return true;
        }
    }

    /** Returns after a change, once it is quiet again; false if the watch was closed. */
    boolean awaitChange() throws InterruptedException {
        try {
            WatchKey key = first;
            first = null;
            while (key == null && there().equals(there)) {
                key = watch.poll(LOOK_AGAIN_MILLISECONDS, TimeUnit.MILLISECONDS);
            }
            while (key != null) {
                key.pollEvents();
                key.reset();
                key = watch.poll(QUIET_MILLISECONDS, TimeUnit.MILLISECONDS);
            }
            register();
        } catch (ClosedWatchServiceException e) {
            return false;
        }
        return true;
    }

    private List<Path> there() {
        return folders.stream().filter(Files::isDirectory).toList();
    }

    /** Registering a folder again does nothing, so this only adds what is new. */
    private void register() {
        there = there();
        try {
            for (Path folder : there) {
                Files.walkFileTree(folder, new Registering());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What vanishes on the way, or may not be read, is passed over: the folder above it tells when that changes. */
    private final class Registering extends SimpleFileVisitor<Path> {
        @Override
        public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
            try {
                folder.register(
                        watch,
                        StandardWatchEventKinds.ENTRY_CREATE,
                        StandardWatchEventKinds.ENTRY_MODIFY,
                        StandardWatchEventKinds.ENTRY_DELETE);
                return FileVisitResult.CONTINUE;
            } catch (IOException gone) {
                return FileVisitResult.SKIP_SUBTREE;
            }
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException gone) {
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path folder, IOException gone) {
            return FileVisitResult.CONTINUE;
        }
    }

    @Override
    public void close() {
        try {
            watch.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
