package loomwright.generator.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The folder a run works in, beside the place of its site, and what is left of it if the machine stopped in the middle. Only a run that
 * has the place to itself may ask.
 */
final class Broken {
    static final String NEW = "new";
    static final String OLD = "old";
    /** Tells our folder from one of somebody else with the same kind of name. */
    private static final String MARK = ".loomwright-at-work";

    private Broken() {}

    /** Makes a folder to work in. */
    static Path begin(Path target) throws IOException {
        Path own = Files.createTempDirectory(target.getParent(), prefix(target));
        Files.createFile(own.resolve(MARK));
        return own;
    }

    /** Removes the folder, which must be empty. */
    static void end(Path own) throws IOException {
        Files.deleteIfExists(own.resolve(MARK));
        Files.deleteIfExists(own);
    }

    /** Removes what a run left that came to no end; a site that it had taken away already goes back to its place. */
    static void clear(Path target) throws IOException {
        for (Path left : leftBeside(target)) {
            if (Files.exists(left.resolve(OLD)) && !Files.exists(target)) {
                Files.move(left.resolve(OLD), target);
            }
            try (Stream<Path> tree = Files.walk(left)) {
                for (Path each : tree.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
    }

    private static List<Path> leftBeside(Path target) throws IOException {
        try (Stream<Path> beside = Files.list(target.getParent())) {
            return beside.filter(each -> each.getFileName().toString().startsWith(prefix(target)))
                    .filter(each -> Files.isRegularFile(each.resolve(MARK)))
                    .toList();
        }
    }

    private static String prefix(Path target) {
        return "." + target.getFileName() + ".";
    }
}
