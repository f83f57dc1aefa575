package loomwright.generator.circuit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The circuit files that files and folders stand for. */
public final class CircuitPaths {
    private static final String ENDING = ".json";

    private CircuitPaths() {}

    /** A file stands for itself; a folder for every file in it, however deep, whose name ends in {@code .json}. Each once, in order. */
    public static List<Path> of(List<Path> given) {
        List<Path> files = new ArrayList<>();
        for (Path each : given) {
            for (Path file : Files.isDirectory(each) ? in(each) : List.of(each)) {
                if (!files.contains(file)) {
                    files.add(file);
                }
            }
        }
        return List.copyOf(files);
    }

    /** Links to other folders are not followed, so that a folder that holds itself ends. */
    private static List<Path> in(Path folder) {
        try (Stream<Path> tree = Files.walk(folder)) {
            return tree.filter(each -> each.getFileName().toString().endsWith(ENDING) && !Files.isDirectory(each)).sorted().toList();
        } catch (IOException | UncheckedIOException e) {
            // What cannot be listed is told as a file that cannot be read.
            return List.of(folder);
        }
    }
}
