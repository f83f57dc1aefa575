package loomwright.circuit.file;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.DrilledPanel;
import loomwright.circuit.Part;
import loomwright.worked.Field;

/**
 * A circuit as a file: JSON of our own, {@code loomwright-circuit} version 1, described by {@code content/circuit.schema.json}.
 *
 * <p>Every quantity is the text that was typed, with its unit; what is as usual is left out. A file that is damaged, too large, of a newer version or hostile is refused
 * with the reason and the place.
 */
public final class CircuitFile {
    /** What the file says it is. */
    public static final String FORMAT = "loomwright-circuit";

    /** The version written and read. */
    public static final int VERSION = 1;

    /** The largest file that is read, in bytes. */
    public static final int MOST_BYTES = JsonReader.MOST_BYTES;

    private CircuitFile() {}

    /** The circuit as the text of a file. */
    public static String write(Circuit circuit) {
        JsonWriter writer = new JsonWriter();
        writer.open('{');
        writer.text("format", FORMAT);
        writer.number("version", Integer.toString(VERSION));
        writer.text("name", circuit.name());
        writer.key("parts");
        writer.open('[');
        for (Part part : circuit.parts()) {
            writer.next();
            write(writer, part);
        }
        writer.close(']');
        if (!circuit.panel().isEmpty()) {
            writer.key("drilled-panel");
            write(writer, circuit.panel());
        }
        writer.close('}');
        return writer.written();
    }

    private static void write(JsonWriter writer, Part part) {
        writer.open('{');
        writer.text("id", part.id());
        writer.text("kind", part.kind().key());
        writeFilled(writer, "name", part.name());
        writeFilled(writer, "fed-by", part.fedBy());
        writeFilled(writer, "triggered-from", part.triggeredFrom());
        writeFilled(writer, "reading", part.reading());
        for (Field field : part.kind().fields()) {
            writeFilled(writer, field.key(), part.isAsUsual(field.key()) ? "" : part.text(field.key()));
        }
        writer.close('}');
    }

    private static void write(JsonWriter writer, DrilledPanel panel) {
        writer.open('{');
        for (int i = 0; i < panel.texts().size(); i++) {
            writeFilled(writer, DrilledPanel.FIELDS.get(i).key(), panel.texts().get(i));
        }
        writer.close('}');
    }

    private static void writeFilled(JsonWriter writer, String key, String text) {
        if (!text.isEmpty()) {
            writer.text(key, text);
        }
    }

    /** Whether a text is small enough to be read again; every circuit that can be written is. */
    public static boolean mayBeRead(String text) {
        return Utf8.length(text) <= MOST_BYTES;
    }

    /** The circuit in the text of a file, or every reason why there is none. */
    public static FileRead read(String text) {
        try {
            CircuitReader reader = new CircuitReader();
            Circuit circuit = reader.circuit(JsonReader.read(text));
            return new FileRead(circuit, circuit == null ? List.copyOf(reader.faults()) : List.of());
        } catch (JsonFault fault) {
            return FileRead.refused(fault.fault());
        }
    }
}
