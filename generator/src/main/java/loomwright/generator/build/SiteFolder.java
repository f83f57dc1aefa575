package loomwright.generator.build;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import loomwright.generator.problem.UserMistake;

/**
 * A site on the disk. It is written in a folder of its own beside the old one and takes its place in one step at the end, so that nobody
 * ever sees half of it. Nothing is removed but what an earlier run wrote.
 */
public final class SiteFolder implements Output, AutoCloseable {
    private static final int NAMED = 5;

    private final Path shown;
    private final Path target;
    private final PlaceLock lock;
    private final Path own;
    private final Path fresh;
    private final Set<Path> made = new HashSet<>();
    private final Map<String, String> written = new TreeMap<>();

    /**
     * Begins a new site that will stand at {@code target}.
     *
     * @throws UserMistake if another run writes there, or if files of others lie there
     */
    public SiteFolder(Path target) {
        this.shown = target;
        this.target = target.toAbsolutePath().normalize();
        this.lock = PlaceLock.of(this.target);
        try {
            refuseOthers(true);
            Broken.clear(this.target);
            this.own = Broken.begin(this.target);
            this.fresh = Files.createDirectory(own.resolve(Broken.NEW));
        } catch (IOException e) {
            lock.close();
            throw new UncheckedIOException(e);
        } catch (RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    private void refuseOthers(boolean reading) {
        List<String> others = Written.others(target, reading);
        String more = others.size() > NAMED ? " and " + (others.size() - NAMED) + " more" : "";
        UserMistake.unless(
                others.isEmpty(),
                shown + " holds what this program did not write: " + String.join(", ", others.subList(0, Math.min(NAMED, others.size()))) + more
                        + ". Move it away, or name another folder with --out.");
    }

    @Override
    public void put(String address, byte[] bytes) {
        try {
            Path file = fresh.resolve(address);
            if (made.add(file.getParent())) {
                Files.createDirectories(file.getParent());
            }
            written.put(address, Written.sum(bytes));
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts the new site in place of the old one. */
    public void finish() {
        put(Written.MARK, Written.list(written));
        refuseOthers(false);
        Path old = own.resolve(Broken.OLD);
        try {
            if (Files.exists(target)) {
                Files.move(target, old);
            }
            Files.move(fresh, target);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Removes the old site, or the new one if it was not finished, and gives the place back. */
    @Override
    public void close() {
        try (lock) {
            if (Files.exists(fresh)) {
                dropUnfinished();
            }
            if (Files.exists(own.resolve(Broken.OLD))) {
                Written.remove(own.resolve(Broken.OLD));
            }
            Broken.end(own);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The disk may be full, so the list is not written down first. */
    private void dropUnfinished() throws IOException {
        for (String file : written.keySet()) {
            Files.deleteIfExists(fresh.resolve(file));
        }
        Written.remove(fresh);
    }
}
