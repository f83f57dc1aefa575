package loomwright.generator.build;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import loomwright.generator.offline.OfflineFiles;

/**
 * The parts of the site that are not content: templates, style and scripts.
 *
 * @param folder the folder that holds {@code templates}, {@code style} and perhaps {@code script}
 * @param programs folders with more script files, such as the compiled page program
 */
public record Parts(Path folder, List<Path> programs) {
    private static final String LIBRARY = "/META-INF/resources/webjars/lunr/2.3.9/lunr.min.js";

    Path templates() {
        return folder.resolve("templates");
    }

    /** The names of the script files, in the order to load them. */
    List<String> scripts() {
        return scriptFiles().keySet().stream().toList();
    }

    /** The program of the service worker, or null if there is none. */
    String worker() {
        Path file = folder.resolve("worker").resolve(OfflineFiles.WORKER);
        return Files.isRegularFile(file) ? new String(read(file), StandardCharsets.UTF_8) : null;
    }

    /** Everything that is copied into the site as it is, by name. */
    public Map<String, byte[]> files() {
        Map<String, byte[]> files = new TreeMap<>();
        for (Path file : list(folder.resolve("style"))) {
            String name = file.getFileName().toString();
            if (name.endsWith(".css") || name.endsWith(".woff2")) {
                files.put(name, read(file));
            }
        }
        scriptFiles().forEach((name, file) -> files.put(name, read(file)));
        files.put("lunr.js", library());
        return files;
    }

    private Map<String, Path> scriptFiles() {
        List<Path> folders = new ArrayList<>(programs);
        folders.add(folder.resolve("script"));
        Map<String, Path> files = new TreeMap<>();
        for (Path each : folders) {
            for (Path file : list(each)) {
                String name = file.getFileName().toString();
                if (name.endsWith(".js")) {
                    files.put(name, file);
                }
            }
        }
        return files;
    }

    private static byte[] library() {
        try (InputStream in = Parts.class.getResourceAsStream(LIBRARY)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> list(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.filter(Files::isRegularFile).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
