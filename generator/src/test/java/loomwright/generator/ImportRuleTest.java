package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who may know whom. Each library has one package that knows it, and our own packages depend on each other one way only. */
class ImportRuleTest {
    private static final Path SOURCES = Path.of("src/main/java/loomwright/generator");

    private static final Map<String, String> LIBRARIES = Map.of(
            "com.vladsch.", "markdown",
            "com.github.mustachejava.", "page",
            "org.jsoup.", "check",
            "org.snakeyaml.", "content",
            "com.sun.net.httpserver.", "preview",
            "picocli.", "");

    /** From the inside out; a package may use those before it. The command line, without a name of its own, is outermost. */
    private static final List<String> ORDER =
            List.of("problem", "content", "example", "markdown", "check", "page", "build", "preview", "");

    private static final String OURS = "loomwright.generator.";

    private static String packageOf(Path file) {
        Path below = SOURCES.relativize(file);
        return below.getNameCount() == 1 ? "" : below.getName(0).toString();
    }

    private static void check(String owner, String imported, String place, List<String> wrong) {
        LIBRARIES.forEach((library, knows) -> {
            if (imported.startsWith(library) && !owner.equals(knows)) {
                wrong.add(place + " imports " + imported);
            }
        });
        if (imported.startsWith(OURS)) {
            String rest = imported.substring(OURS.length());
            String used = rest.indexOf('.') < 0 ? "" : rest.substring(0, rest.indexOf('.'));
            if (ORDER.indexOf(used) > ORDER.indexOf(owner)) {
                wrong.add(place + " imports " + imported);
            }
        }
    }

    @Test
    void everyImportFollowsTheRules() throws IOException {
        List<String> wrong = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".java")).sorted().toList()) {
                List<String> lines = Files.readAllLines(file);
                for (int i = 0; i < lines.size(); i++) {
                    if (lines.get(i).startsWith("import ")) {
                        String imported = lines.get(i).replaceAll("^import (static )?|;$", "");
                        check(packageOf(file), imported, file + ":" + (i + 1), wrong);
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
    }
}
