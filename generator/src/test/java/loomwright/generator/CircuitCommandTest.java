package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import loomwright.circuit.file.CircuitFile;
import loomwright.circuit.file.StartingCircuits;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** {@code loomwright circuit}: what it says of sound, bad, damaged and hostile files, and with which number it ends. */
@Timeout(60)
class CircuitCommandTest {
    private static final String LAMP = """
            {"format": "loomwright-circuit", "version": 1, "name": "Ann's hut", "parts": [
              {"id": "battery", "kind": "supply", "battery": "given", "battery-resistance-low": "8 mΩ", "battery-resistance-high": "25 mΩ"},
              {"id": "fuse", "kind": "protection", "name": "F7 Main fuse", "fed-by": "battery", "device": "large-strip", "rating": "30 A"},
              {"id": "run", "kind": "conductor", "name": "4/6 Run to the lamp", "fed-by": "fuse", "ambient": "30 °C", "size": "2.5 mm²", "route-length": "3 m"},
              {"id": "lamp", "kind": "load", "name": "Lamp", "fed-by": "run", "power": "12 W"}
            ]}
            """;

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final PrintStream realOut = System.out;
    private final PrintStream realErr = System.err;

    @BeforeEach
    void begin() {
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    @AfterEach
    void end() {
        System.setOut(realOut);
        System.setErr(realErr);
    }

    private int run(Object... arguments) {
        int code = Loomwright.run(Stream.concat(Stream.of("circuit"), Stream.of(arguments)).map(Object::toString).toArray(String[]::new));
        assertFalse(all().contains("\tat ") || all().contains("Exception"), () -> "a stack trace: " + all());
        return code;
    }

    private String all() {
        return out.toString(StandardCharsets.UTF_8) + err.toString(StandardCharsets.UTF_8);
    }

    /** What was said, without the ends of lines. */
    private String said() {
        return all().replaceAll("\\s+", " ");
    }

    private Path file(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private void says(String words) {
        assertTrue(said().contains(words), () -> "not said: " + words + "\n" + all());
    }

    @Test
    void holdsReadingsAgainstWhatShouldBeRead() throws IOException {
        Path file = file("read.json", LAMP.replace("\"battery\": \"given\"", "\"reading\": \"12.8\", \"battery\": \"given\"")
                .replace("\"power\"", "\"reading\": \"12.3 V\", \"power\""));
        run(file);
        says("E1 Lamp: reading, caution Between ");
        says("0.5 V are lost; expected are ");
        // 12 W at 12.74 V are 0.942 A; 6 m at 7.60 mΩ/m (ISO 6722-1, 2.5 mm²) lose some 0.05 V of the 0.5 V: 0.45 V / 0.942 A = 0.48 Ω
        assertTrue(said().matches("(?s).*An extra resistance of 4[678]\\d?(\\.\\d)? mΩ there would explain it.*"), this::all);
        says("What to do: go along this stretch joint by joint with the loads on");
    }

    @Test
    void saysWhichReadingIsNoVoltage() throws IOException {
        run(file("read.json", LAMP.replace("\"battery\": \"given\"", "\"reading\": \"many\", \"battery\": \"given\"")));
        says("Reading, G1 Battery");
        says("enter volts");
        says("The reading at the battery is needed, with the loads on: the others are held against it.");
    }

    @Test
    void tellsEachFindingWithFigureLimitSourceAndRemedy() throws IOException {
        Path file = file("ann.json", LAMP.replace("\"size\"", "\"insulation-temperature\": \"t60\", \"size\""));
        assertEquals(1, run(file));
        says("/ann.json: Ann's hut 1 thing to change, ");
        // 33 CFR 183.425 Table 5: 14 AWG (2.08 mm²) stands in for 2.5 mm²; 60 °C: 20 A
        says("Change this F7 Main fuse: device against conductor ");
        says("F7 Main fuse, before 4/6 Run to the lamp: its rating, 30 A, is above the ampacity of 2.5 mm², 20 A. What to do: take");
        says("Table 5");
        says("What to do: take a smaller rating for F7 Main fuse, put a device before 4/6 Run to the lamp, or take a thicker conductor or insulation of a higher rating there. Source: ");
        String told = all();
        assertTrue(told.indexOf("Change this") < told.indexOf("Decide this"), "worst first");
        assertFalse(told.contains("Checks that passed"), told);
        says("1 file: 0 refused, 0 with figures that do not go together, 1 with something to change.");
    }

    @Test
    void tellsASmallCircuitInThisForm() throws IOException {
        assertEquals(1, run(file("ann.json", LAMP.replace("\"size\"", "\"insulation-temperature\": \"t60\", \"size\""))));
        String told = all().replace(folder.toString(), "members");
        Path golden = Path.of("src", "test", "resources", "circuit-report", "lamp.txt");
        if (Boolean.getBoolean("golden.rewrite")) {
            Files.writeString(golden, told);
        }
        assertEquals(Files.readString(golden), told);
    }

    @Test
    void writesOneDocumentForAScriptWhateverTheFilesHold() throws IOException {
        file("1.json", LAMP.replace("\"battery\": \"given\"", "\"reading\": \"12.8\", \"battery\": \"given\"").replace("\"power\"", "\"reading\": \"12.3 V\", \"power\""));
        file("2.json", LAMP.replace("\"power\": \"12 W\"", "\"power\": \"12 W\", \"current\": \"1 A\""));
        file("3.json", "{\"\\u001b]0;taken\\u0007\": 1}");
        file("4.json", LAMP.replace("Ann's hut", "The \\\"hut\\\" <b> \\\\ \ud83d\ude80").replace("30 A", "20 A"));
        assertEquals(1, run("--json", folder, "../content/circuits"));
        String written = out.toString(StandardCharsets.UTF_8);
        assertEquals(List.of(), List.copyOf(schema().validate(written, InputFormat.JSON)));
        assertTrue(written.chars().noneMatch(c -> c < ' ' && c != '\n' || c >= 0x7f && c < 0xa0), written);
        for (String part : List.of("\"outcome\": \"refused\"", "\"outcome\": \"faulty\"", "\"outcome\": \"checked\"", "\"readings\": [", "\"figures-to-get\": [")) {
            assertTrue(written.contains(part), part);
        }
        for (String damaged : List.of(
                written.replaceFirst("\"verdict\": \"not-known\"", "\"verdict\": \"passed\""), written.replaceFirst("\"words\": ", "\"text\": "),
                written.replaceFirst("\"value\": [0-9.]+", "\"value\": \"1\""), written.replaceFirst("\"version\": 1", "\"version\": 2"))) {
            assertFalse(schema().validate(damaged, InputFormat.JSON).isEmpty(), "the schema lets it pass");
        }
    }

    private static JsonSchema schema() throws IOException {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Files.readString(Path.of("..", "content", "circuit-report.schema.json")));
    }

    @Test
    void listsThePassedChecksWhenAsked() throws IOException {
        assertEquals(0, run("--passed", file("ann.json", LAMP.replace("30 A", "20 A"))));
        says("4/6 Run to the lamp: what the conductor may carry ");
        says(" no things to change, ");
    }

    @Test
    void findsNoStopInTheCircuitsOfTheLessons() {
        assertEquals(0, run("../content/circuits"));
        says("reedmere-punt.json: Reedmere punt no things to change, ");
        says("reedmere-trailer.json: Reedmere field trailer no things to change, ");
        says("2 files: 0 refused");
    }

    @Test
    void looksThroughFoldersOnceAndInOrder() throws IOException {
        Path bob = file("members/b/bob.json", LAMP.replace("Ann", "Bob").replace("30 A", "20 A"));
        file("members/a/ann.json", LAMP.replace("30 A", "20 A"));
        file("members/a/notes.txt", "not looked at");
        Files.createSymbolicLink(folder.resolve("members/a/circle.json"), folder.resolve("members"));
        assertEquals(0, run(folder.resolve("members"), bob));
        String told = all();
        assertTrue(told.indexOf("Ann's hut") < told.indexOf("Bob's hut"), told);
        assertEquals(told.indexOf("Bob's hut"), told.lastIndexOf("Bob's hut"));
        says("2 files: 0 refused");
    }

    @Test
    void tellsPartAndFieldOfAFault() throws IOException {
        assertEquals(1, run(file("ann.json", LAMP.replace("\"power\": \"12 W\"", "\"power\": \"12 W\", \"current\": \"1 A\""))));
        says("ann.json: Ann's hut 1 fault, nothing checked");
        says("E1 Lamp, power: More than one of power, current, resistance and power at the ports is entered: keep one and empty the others.");
        assertEquals(1, run(file("far.json", LAMP.replace("3 m", "3 parsec"))));
        says("far.json: refused line 4, column ");
        says("parts[2].route-length: ");
    }

    @Test
    void refusesWithAReasonAndGoesOn() throws IOException {
        file("1.json", "");
        file("2.json", LAMP.substring(0, 300));
        file("3.json", LAMP.replace("\"version\": 1", "\"version\": 9"));
        file("4.json", "{\"name\": \"package\"}");
        file("5.json", "[".repeat(100_000));
        Files.write(folder.resolve("6.json"), new byte[] {'{', (byte) 0xff, (byte) 0xfe, '}'});
        try (RandomAccessFile huge = new RandomAccessFile(folder.resolve("7.json").toFile(), "rw")) {
            huge.setLength(40L << 30);
        }
        file("8.json", CircuitFile.write(StartingCircuits.punt()));
        assertEquals(1, run(folder, folder.resolve("missing.json")));
        says("1.json: refused line 1, column 1: The file is empty.");
        says("2.json: refused ");
        says("3.json: refused line 1, column 45: version: The file is of version 9, made by a newer copy of this site; this one reads version 1. Open it there.");
        says("4.json: refused line 1, column 1: format: This is no circuit file");
        says("5.json: refused line 1, column 7: [0][0][0][0][0][0]: Lists and objects are nested more than 6 deep");
        says("6.json: refused The file is not UTF-8 text: it is damaged, or no circuit file.");
        says("7.json: refused The file is larger than 3 MB. No circuit needs so much: is it the right file?");
        says("8.json: Reedmere punt no things to change");
        says("missing.json: refused There is no such file: check its name.");
        says("9 files: 8 refused");
    }

    @Test
    void letsNothingInAFileDriveTheTerminal() throws IOException {
        file("1.json", LAMP.replace("Ann's hut", "\\u001b[2J"));
        file("2.json", "{\"format\": \"loomwright-circuit\", \"version\": 1, \"\\u001b]0;taken\\u0007\": 1, \"parts\": []}");
        file("3.json", LAMP.replace("\"kind\": \"load\"", "\"kind\": \"\\u202eevil\\u0000\""));
        assertEquals(1, run(folder));
        assertTrue(all().chars().noneMatch(c -> c < ' ' && c != '\n' || c >= 0x7f && c < 0xa0 || c == 0x202e), all());
        says("3 files: 3 refused");
    }

    @Test
    void saysThatThereIsNothingToCheck() {
        assertEquals(1, run(folder));
        says("There is no circuit file here");
    }
}
