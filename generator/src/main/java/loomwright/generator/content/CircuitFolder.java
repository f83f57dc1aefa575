package loomwright.generator.content;

import java.util.LinkedHashMap;
import java.util.Map;
import loomwright.circuit.PartFault;
import loomwright.circuit.check.Examination;
import loomwright.circuit.file.CircuitFile;
import loomwright.circuit.file.FileFault;
import loomwright.circuit.file.FileRead;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.generator.problem.Span;
import loomwright.markup.Words;

/** Reads {@code circuits/KEY.json}. What stands in the way is told with its line, as for every other file. */
final class CircuitFolder {
    private static final String ENDING = ".json";
    private static final String OTHERWISE = "Correct it, or open the file on the page \"Your circuit\" and download it anew.";

    private final Folder folder;
    private final Problems problems;

    CircuitFolder(Folder folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    Map<String, CircuitText> circuits() {
        Map<String, CircuitText> circuits = new LinkedHashMap<>();
        for (String key : folder.keys("circuits", ENDING)) {
            SourceFile file = folder.read("circuits/" + key + ENDING);
            if (file != null) {
                circuits.put(key, new CircuitText(key, file, examined(file)));
            }
        }
        return circuits;
    }

    /** The circuit examined, or null with its problems. */
    private Examination examined(SourceFile file) {
        FileRead read = CircuitFile.read(file.text());
        for (FileFault fault : read.faults()) {
            String path = fault.path().isEmpty() ? "" : fault.path() + ": ";
            int start = Math.min(file.text().length(), file.lineStart(fault.line()) + fault.column() - 1);
            problems.add(problem(file.span(start, start), path, fault.message()));
        }
        if (read.circuit() == null) {
            return null;
        }
        Examination examination = Examination.of(read.circuit());
        for (PartFault fault : examination.faults()) {
            problems.add(problem(place(file, fault), fault.partId() + ", " + fault.fieldKey() + ": ", fault.message()));
        }
        return examination.faults().isEmpty() ? examination : null;
    }

    /** A message of the calculators in the two pieces of ours: what is wrong, and what to do. */
    private static Problem problem(Span place, String path, String message) {
        int sentence = message.indexOf(". ");
        int colon = message.lastIndexOf(": ");
        int split = sentence >= 0 ? sentence : colon;
        if (split < 0) {
            return place.problem(path + message, OTHERWISE);
        }
        String remedy = message.substring(split + 2).strip();
        return place.problem(path + message.substring(0, split), Words.sentence(Words.capital(remedy)));
    }

    /** Where a part names a field, or where the part stands if it leaves the field out. */
    private static Span place(SourceFile file, PartFault fault) {
        String text = file.text();
        int part = quotedAfter(text, "id", fault.partId());
        if (part < 0) {
            return file.lineSpan(1);
        }
        int end = text.indexOf('}', part);
        return file.find("\"" + fault.fieldKey() + "\"", part, end < 0 ? text.length() : end);
    }

    /** The place of {@code "key": "value"}, whatever space stands around the colon; −1 if it is not there. */
    private static int quotedAfter(String text, String key, String value) {
        String name = "\"" + key + "\"";
        for (int at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1)) {
            String rest = text.substring(at + name.length()).stripLeading();
            if (rest.startsWith(":") && rest.substring(1).stripLeading().startsWith("\"" + value + "\"")) {
                return at;
            }
        }
        return -1;
    }
}
