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
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/** The one place where planted mistakes touch the program: reads a circuit, changes it, has it examined. */
final class Bench {
    private Bench() {}

    /**
     * A finding.
     *
     * @param other the part it was held against; empty if there is none
     * @param limit what the figure was held against, or null
     * @param remedy what to do
     */
    record Named(String check, String part, String other, Verdict verdict, String words, Quantity figure, Quantity limit, String remedy) {
        /** How many times its limit the figure is; NaN if there is no limit. */
        double excess() {
            return limit == null ? Double.NaN : figure.base() / limit.base();
        }
    }

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

    /** The circuit with another text in a field, or null if it cannot be used there. */
    static Circuit tried(Circuit circuit, String id, String field, String text) {
        Circuit changed = has(kind(circuit, id), field) ? CircuitEdits.changed(circuit, id, field, text).circuit() : null;
        return changed != null && changed.faults().isEmpty() ? changed : null;
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
            Finding what = finding.finding();
            found.add(new Named(
                    finding.check().name(), finding.partId(), finding.otherId(), what.verdict(), what.words(), what.figure(), what.limit(),
                    what.remedy()));
        }
        return found;
    }

    /** The circuit with the smallest standard size or rating of a part that the program finds to pass; null if there is none. */
    static Circuit smallestThatPasses(Circuit circuit, String id) {
        return SmallestThatPasses.of(circuit, id).circuit();
    }
}
