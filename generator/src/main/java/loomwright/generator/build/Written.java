package loomwright.generator.build;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The list of files that a site folder was written with. It stands in the folder and says what may be removed again. */
final class Written {
    /** The file with the list, one address a line. */
    static final String MARK = ".loomwright-site";

    private Written() {}

    /** The list as it is kept. */
    static byte[] list(Collection<String> addresses) {
        return (String.join("\n", new TreeSet<>(addresses)) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** The files of a folder that it was not written with, by address; empty if there are none, or no such folder. */
    static List<String> others(Path folder) {
        if (!Files.exists(folder)) {
            return List.of();
        }
        if (!Files.isDirectory(folder)) {
            return List.of(folder.getFileName().toString());
        }
        Set<String> ours = of(folder);
        return files(folder).stream().filter(file -> !ours.contains(file)).toList();
    }

    /** Removes the files that a folder was written with, and then every folder in it that is empty. */
    static void remove(Path folder) {
        Set<String> ours = of(folder);
        try {
            for (String file : ours) {
                Files.deleteIfExists(folder.resolve(file));
            }
            try (Stream<Path> tree = Files.walk(folder)) {
                for (Path each : tree.filter(Files::isDirectory).sorted(Comparator.reverseOrder()).toList()) {
                    each.toFile().delete();
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> of(Path folder) {
        Path mark = folder.resolve(MARK);
        if (!Files.isRegularFile(mark)) {
            return Set.of();
        }
        try {
            Set<String> ours = new HashSet<>(Files.readAllLines(mark));
            ours.removeIf(line -> line.isEmpty() || !folder.resolve(line).normalize().startsWith(folder));
            ours.add(MARK);
            return ours;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> files(Path folder) {
        try (Stream<Path> tree = Files.walk(folder)) {
            return tree.filter(each -> !Files.isDirectory(each) || Files.isSymbolicLink(each))
                    .map(each -> folder.relativize(each).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
