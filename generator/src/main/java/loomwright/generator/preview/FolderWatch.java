package loomwright.generator.preview;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Waits for a change in any of several folders and what is below them. */
final class FolderWatch implements AutoCloseable {
    /** An editor writes a file in several steps; the build waits until it has been quiet for this long. */
    private static final int QUIET_MILLISECONDS = 40;

    private final List<Path> folders;
    private final WatchService watch;
    private WatchKey first;

    FolderWatch(List<Path> folders) {
        this.folders = folders;
        try {
            this.watch = FileSystems.getDefault().newWatchService();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        folders.forEach(this::register);
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
            WatchKey key = first == null ? watch.take() : first;
            first = null;
            while (key != null) {
                key.pollEvents();
                key.reset();
                key = watch.poll(QUIET_MILLISECONDS, TimeUnit.MILLISECONDS);
            }
        } catch (ClosedWatchServiceException e) {
            return false;
        }
        folders.forEach(this::register);
        return true;
    }

    /** Registering a folder again does nothing, so this only adds what is new. */
    private void register(Path folder) {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> tree = Files.walk(folder)) {
            for (Path each : tree.filter(Files::isDirectory).toList()) {
                each.register(
                        watch,
                        StandardWatchEventKinds.ENTRY_CREATE,
                        StandardWatchEventKinds.ENTRY_MODIFY,
                        StandardWatchEventKinds.ENTRY_DELETE);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
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
