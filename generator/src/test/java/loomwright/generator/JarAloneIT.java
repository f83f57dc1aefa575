package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar as a user runs it: with its libraries, without them, and in another folder. */
class JarAloneIT {
    private static final Path JAR = Path.of("target/loomwright.jar").toAbsolutePath();

    @TempDir
    Path folder;

    /** What a run prints, in the folder of the test, with the number it ends with in front. */
    private String run(Path jar, String... arguments) throws IOException, InterruptedException {
        Path said = folder.resolve("said.txt");
        ProcessBuilder builder = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", jar.toString());
        builder.command().addAll(List.of(arguments));
        int end = builder.directory(folder.toFile()).redirectErrorStream(true).redirectOutput(said.toFile()).start().waitFor();
        return end + " " + Files.readString(said, StandardCharsets.UTF_8);
    }

    @Test
    void saysThatItsLibrariesAreMissing() throws IOException, InterruptedException {
        Path alone = Files.copy(JAR, folder.resolve("loomwright.jar"));
        String missing = "2 The folder \"lib\" is missing beside loomwright.jar, or not whole. Copy the two together.\n";
        assertEquals(missing, run(alone, "build"));
        assertEquals(missing, run(alone, "--version"));
    }

    @Test
    void saysThatItRunsInAnotherFolder() throws IOException, InterruptedException {
        assertEquals(
                "1 There is no folder content here. Run this in the folder of the project, or name the folder with --content.\n",
                run(JAR, "build"));
    }

    @Test
    void endsWithTheNumberOfTheSecondJava() throws IOException, InterruptedException {
        String names = run(JAR, "names");
        assertTrue(names.startsWith("0 ") && names.contains("drawings: each with the values it takes"), names);
        assertTrue(run(JAR, "circuit", "no-such.json").startsWith("1 "));
    }
}
