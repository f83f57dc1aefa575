package loomwright.circuit.hazard;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Edit;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.check.SmallestThatPasses;
import loomwright.circuit.file.CircuitFile;
import loomwright.circuit.file.FileRead;
import loomwright.quantity.Quantity;
import loomwright.worked.Verdict;

/** The one place where planted mistakes touch the program: reads a circuit, changes it, has it examined. */
final class Bench {
    /** What a size or a rating decides for its own part, so that another size can clear it. */
    private static final List<String> CLEARED_BY_SIZE = List.of("AMPACITY", "CONDUCTOR_PROTECTED", "SHORT_CIRCUIT_HEAT", "DEVICE_LOADING");

    private Bench() {}

    /**
     * A finding.
     *
     * @param excess how many times its limit the figure is; NaN if there is no limit
     */
    record Named(String check, String part, Verdict verdict, String words, double excess) {}

    static Circuit read(String file) {
        try (InputStream stream = Bench.class.getResourceAsStream(file)) {
            FileRead read = CircuitFile.read(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
            if (read.circuit() == null) {
                throw new AssertionError(file + ": " + read.faults());
            }
            return read.circuit();
        } catch (IOException exception) {
            throw new UncheckedIOException(exception);
        }
    }

    static List<String> ids(Circuit circuit) {
        List<String> ids = new ArrayList<>();
        for (Part part : circuit.parts()) {
            ids.add(part.id());
        }
        return ids;
    }

    static String kind(Circuit circuit, String id) {
        return circuit.part(id).kind().key();
    }

    static String title(Circuit circuit, String id) {
        return circuit.part(id).title();
    }

    static String fedBy(Circuit circuit, String id) {
        return circuit.part(id).fedBy();
    }

    static String triggeredFrom(Circuit circuit, String id) {
        return circuit.part(id).triggeredFrom();
    }

    static String text(Circuit circuit, String id, String field) {
        return circuit.part(id).text(field);
    }

    /** What was entered, or null. */
    static Quantity quantity(Circuit circuit, String id, String field) {
        return circuit.part(id).entries().quantity(field);
    }

    /** Whether a kind of part has a field. */
    static boolean has(String kind, String field) {
        PartKind known = PartKind.of(kind);
        return known != null && (field.isEmpty() || known.indexOf(field) >= 0);
    }

    /** Whether a kind of part has a field that may be left empty, so that nothing is taken for it. */
    static boolean mayBeEmpty(String kind, String field) {
        return has(kind, field) && PartKind.of(kind).fields().get(PartKind.of(kind).indexOf(field)).usual().isEmpty();
    }

    static Circuit set(Circuit circuit, String id, String field, String text) {
        Edit edit = CircuitEdits.changed(circuit, id, field, text);
        if (edit.circuit() == null) {
            throw new AssertionError(id + ", " + field + ", " + text + ": " + edit.faults());
        }
        return edit.circuit();
    }

    static Circuit without(Circuit circuit, String id) {
        return CircuitEdits.without(circuit, id);
    }

    static Circuit moved(Circuit circuit, String id, String fedBy) {
        return CircuitEdits.moved(circuit, id, fedBy);
    }

    static Circuit triggered(Circuit circuit, String id, String from) {
        return CircuitEdits.triggered(circuit, id, from);
    }

    static Circuit added(Circuit circuit, String kind, String fedBy) {
        return CircuitEdits.added(circuit, PartKind.of(kind), fedBy);
    }

    static Circuit insertedBefore(Circuit circuit, String kind, String id) {
        return CircuitEdits.insertedBefore(circuit, PartKind.of(kind), id);
    }

    /** The part that is in one circuit and was not in another. */
    static String fresh(Circuit before, Circuit after) {
        for (Part part : after.parts()) {
            if (before.part(part.id()) == null) {
                return part.id();
            }
        }
        throw new AssertionError("no new part");
    }

    static List<Named> findings(Circuit circuit) {
        Examination examination = Examination.of(circuit);
        if (!examination.faults().isEmpty()) {
            throw new AssertionError(circuit.name() + ": " + examination.faults());
        }
        List<Named> found = new ArrayList<>();
        for (CircuitFinding finding : examination.findings()) {
            Quantity limit = finding.finding().limit();
            double excess = limit == null ? Double.NaN : finding.finding().figure().base() / limit.base();
            found.add(new Named(finding.check().name(), finding.partId(), finding.finding().verdict(), finding.finding().words(), excess));
        }
        return found;
    }

    /**
     * The circuit with what the program itself would do about a finding; null if it offers nothing. Today that is the smallest size or rating
     * that passes; what a finding comes to offer by itself is to be followed here as well.
     */
    static Circuit advised(Circuit circuit, Named finding) {
        String kind = kind(circuit, finding.part());
        boolean sized = kind.equals("conductor") || kind.equals("protection");
        return sized && CLEARED_BY_SIZE.contains(finding.check()) ? SmallestThatPasses.of(circuit, finding.part()).circuit() : null;
    }
}
