package loomwright.generator.build;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A site on the disk. It is written beside the old one and takes its place in one step at the end, so that nobody ever sees half of it.
 */
public final class SiteFolder implements Output, AutoCloseable {
    /** Marks a folder as one of ours, which may be replaced. */
    static final String MARK = ".loomwright-site";

    private final Path target;
    private final Path beside;
    private final Set<Path> made = new HashSet<>();

    /** Begins a new site that will stand at {@code target}. */
    public SiteFolder(Path target) {
        this.target = target.toAbsolutePath().normalize();
        this.beside = this.target.resolveSibling("." + this.target.getFileName() + ".new");
        remove(beside);
        put(MARK, new byte[0]);
    }

    /** Whether the folder holds files that are not a site of ours and must not be thrown away. */
    public static boolean holdsOther(Path target) {
        if (!Files.exists(target) || Files.exists(target.resolve(MARK))) {
            return false;
        }
        try (Stream<Path> entries = Files.isDirectory(target) ? Files.list(target) : Stream.of(target)) {
            return entries.findAny().isPresent();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void put(String address, byte[] bytes) {
        try {
            Path file = beside.resolve(address);
            if (made.add(file.getParent())) {
                Files.createDirectories(file.getParent());
            }
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts the new site in place of the old one. */
    public void finish() {
        Path old = target.resolveSibling("." + target.getFileName() + ".old");
        remove(old);
        try {
            if (Files.exists(target)) {
                Files.move(target, old);
            }
            Files.move(beside, target);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        remove(old);
    }

    /** Throws the new site away if it was not finished. */
    @Override
    public void close() {
        remove(beside);
    }

    private static void remove(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> tree = Files.walk(folder)) {
            List<Path> deepestFirst = tree.sorted(Comparator.reverseOrder()).toList();
            for (Path each : deepestFirst) {
                Files.delete(each);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
