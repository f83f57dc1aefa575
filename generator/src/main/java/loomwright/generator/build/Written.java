package loomwright.generator.build;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/**
 * The list of files that a site folder was written with, and what each of them held. It stands in the folder and says what may be removed again: a
 * file that was changed since holds somebody's work.
 */
final class Written {
    /** The file with the list: one address a line, a tabulator, and the sum of its bytes. An older program wrote the addresses alone. */
    static final String MARK = ".loomwright-site";

    private Written() {}

    /** The list as it is kept. */
    static byte[] list(Map<String, String> sums) {
        StringBuilder list = new StringBuilder();
        new TreeMap<>(sums).forEach((address, sum) -> list.append(address).append('\t').append(sum).append('\n'));
        return list.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** What tells whether a file is as it was written. */
    static String sum(byte[] bytes) {
        CRC32 sum = new CRC32();
        sum.update(bytes);
        return Long.toHexString(sum.getValue());
    }

    /**
     * The files of a folder that it was not written with, or that were changed since, by address; empty if there are none, or no such folder.
     *
     * @param reading whether to look into each file, which takes longer
     */
    static List<String> others(Path folder, boolean reading) {
        if (!Files.exists(folder)) {
            return List.of();
        }
        if (!Files.isDirectory(folder)) {
            return List.of(folder.getFileName().toString());
        }
        Map<String, String> ours = of(folder);
        List<String> others = new ArrayList<>();
        for (String file : files(folder)) {
            if (!ours.containsKey(file)) {
                others.add(file);
            } else if (reading && !ours.get(file).isEmpty() && !ours.get(file).equals(sum(read(folder.resolve(file))))) {
                others.add(file + " (changed by hand)");
            }
        }
        return others;
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Removes the files that a folder was written with, and then every folder in it that is empty. */
    static void remove(Path folder) {
        try {
            for (String file : of(folder).keySet()) {
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

    /** The sum of each file by its address; empty for a file of which none is known. */
    private static Map<String, String> of(Path folder) {
        Path mark = folder.resolve(MARK);
        if (!Files.isRegularFile(mark)) {
            return Map.of();
        }
        try {
            Map<String, String> ours = new HashMap<>();
            for (String line : Files.readAllLines(mark)) {
                int tab = line.indexOf('\t');
                String address = tab < 0 ? line : line.substring(0, tab);
                if (!address.isEmpty() && folder.resolve(address).normalize().startsWith(folder)) {
                    ours.put(address, tab < 0 ? "" : line.substring(tab + 1));
                }
            }
            ours.put(MARK, "");
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
