package loomwright.circuit.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.PartKind;
import org.junit.jupiter.api.Test;

/** The published schema against what is written, by a validator that is not ours; and against the fields, so that neither can drift. */
class CircuitSchemaTest {
    private static final Path FILE = Path.of("..", "content", "circuit.schema.json");

    @Test
    void saysWhatTheFieldsSay() throws IOException {
        String expected = SchemaText.of();
        if (Boolean.getBoolean("golden.rewrite")) {
            Files.writeString(FILE, expected);
        }
        assertEquals(expected, Files.readString(FILE));
    }

    @Test
    void isItselfAValidSchema() throws IOException {
        JsonSchema meta = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(List.of(), List.copyOf(meta.validate(Files.readString(FILE), InputFormat.JSON)));
    }

    @Test
    void holdsForEveryFileWeWrite() throws IOException {
        Circuit every = StartingCircuits.empty();
        for (PartKind kind : PartKind.values()) {
            every = kind == PartKind.SUPPLY ? every : CircuitEdits.added(every, kind, "battery");
        }
        for (Circuit circuit : List.of(
                every, StartingCircuits.empty(), StartingCircuits.punt(), StartingCircuits.reedmereTrailer(),
                CircuitEdits.named(every, "joint-1", "</script> \ud83d\ude80").circuit())) {
            assertEquals(List.of(), List.copyOf(schema().validate(CircuitFile.write(circuit), InputFormat.JSON)));
        }
    }

    @Test
    void holdsForTheCircuitsOfTheLessons() throws IOException {
        try (Stream<Path> files = Files.list(FILE.resolveSibling("circuits"))) {
            List<Path> all = files.toList();
            assertTrue(all.size() >= 2);
            for (Path file : all) {
                assertEquals(List.of(), List.copyOf(schema().validate(Files.readString(file), InputFormat.JSON)), file.toString());
                assertEquals(List.of(), CircuitFile.read(Files.readString(file)).faults(), file.toString());
            }
        }
    }

    @Test
    void refusesWhatWeRefuse() throws IOException {
        String punt = CircuitFile.write(StartingCircuits.punt());
        for (String damaged : new String[] {
            punt.replace("\"version\": 1", "\"version\": 2"),
            punt.replace("loomwright-circuit", "other"),
            punt.replace("\"route-length\"", "\"length\""),
            punt.replace("\"kind\": \"panel\"", "\"kind\": \"bomb\""),
            punt.replace("\"resistive\"", "\"inductive\""),
            punt.replace("\"id\": \"lead\"", "\"id\": \"Lead\""),
            punt.replace("\"hours\": \"4 h\"", "\"hours\": 4")
        }) {
            assertFalse(schema().validate(damaged, InputFormat.JSON).isEmpty(), damaged.substring(0, 200));
            assertTrue(CircuitFile.read(damaged).circuit() == null);
        }
    }

    private static JsonSchema schema() throws IOException {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(Files.readString(FILE));
    }
}
