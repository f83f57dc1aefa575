package loomwright.generator.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import loomwright.generator.problem.HiddenSigns;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.ShownPath;
import loomwright.generator.problem.SourceFile;

/** The content folder on the disk. Reads files as UTF-8 and names them as the author would. */
final class Folder {
    private static final List<String> WITHOUT_STRAYS = List.of("pages", "tables", "circuits");

    private final Path root;
    private final String name;
    private final Problems problems;

    Folder(Path root, Problems problems) {
        this.root = root;
        this.name = ShownPath.of(root);
        this.problems = problems;
    }

    String name() {
        return name;
    }

    boolean has(String path) {
        return Files.isRegularFile(root.resolve(path));
    }

    /** The names in a folder, sorted, hidden ones left out. Empty if there is no such folder. */
    List<String> names(String folder) {
        Path path = root.resolve(folder);
        if (!Files.isDirectory(path)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(path)) {
            return entries.map(each -> each.getFileName().toString())
                    .filter(each -> !each.startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The files of a folder whose names end so, by key: the name without its ending. One that cannot be part of an address is left out and
     * reported.
     */
    List<String> keys(String folder, String ending) {
        names(folder).stream().filter(each -> WITHOUT_STRAYS.contains(folder) && !each.endsWith(ending)).forEach(each -> stray(folder + "/" + each, "*" + ending));
        return names(folder).stream()
                .filter(each -> each.endsWith(ending))
                .map(each -> each.substring(0, each.length() - ending.length()))
                .filter(key -> FileNames.isSound(key, name + "/" + folder + "/" + key + ending, problems))
                .toList();
    }

    /** Reports what would not be read, so that nobody waits for it to appear; copies that an editor or a system leaves are passed over. */
    void stray(String path, String place) {
        boolean left = path.endsWith("~") || path.endsWith(".bak") || path.endsWith("/Thumbs.db") || path.endsWith("/desktop.ini");
        if (!left) {
            problems.add(Problem.ofFile(
                    name + "/" + path, "nothing of this name is read here", "Here stands " + place + "; photos belong into the folder \"pictures\", drawings into \"drawings\"."));
        }
    }

    /** The file, or null with a problem if it is missing, not UTF-8, or outside. */
    SourceFile read(String path) {
        String shown = name + "/" + path;
        if (!has(path)) {
            problems.add(Files.exists(root.resolve(path))
                    ? Problem.ofFile(shown, "this is no plain file, so it is not read", "Put a file in its place.")
                    : Problem.ofFile(shown, "the file is missing", "Add it, or check how its name is spelt."));
            return null;
        }
        if (!isInside(path)) {
            return null;
        }
        try {
            byte[] bytes = Files.readAllBytes(root.resolve(path));
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return HiddenSigns.refuse(new SourceFile(shown, tidied(text)), problems);
        } catch (CharacterCodingException e) {
            problems.add(Problem.ofFile(shown, "the file is not UTF-8 text", "Save it as UTF-8 in your editor."));
            return null;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether a file lies in the folder; if a link leads out of it, a problem is reported. */
    private boolean isInside(String path) {
        try {
            boolean inside = root.resolve(path).toRealPath().startsWith(root.toRealPath());
            if (!inside) {
                problems.add(Problem.ofFile(
                        name + "/" + path, "the file is a link to a place outside the folder, so it is not read", "Put a copy of it here in place of the link."));
            }
            return inside;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a file holds that is no text; null, with a problem, if it is no plain file or outside. */
    byte[] bytes(String path) {
        if (!has(path)) {
            problems.add(Problem.ofFile(name + "/" + path, "this is no plain file, so it is not read", "Put a file in its place."));
            return null;
        }
        if (!isInside(path)) {
            return null;
        }
        try {
            return Files.readAllBytes(root.resolve(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file that is one YAML mapping, or null if there is no such file or it cannot be read. */
    YamlMap yaml(String path, String what) {
        SourceFile file = has(path) ? read(path) : null;
        return file == null ? null : YamlReader.read(what, file.span(0, file.text().length()), problems);
    }

    /** Takes out the mark some editors put in front, and the carriage returns of others. */
    private static String tidied(String text) {
        String marked = text.startsWith("\uFEFF") ? text.substring(1) : text;
        return marked.indexOf('\r') < 0 ? marked : marked.replace("\r\n", "\n").replace('\r', '\n');
    }
}
