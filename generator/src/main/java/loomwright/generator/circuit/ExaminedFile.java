package loomwright.generator.circuit;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import loomwright.circuit.check.Examination;
import loomwright.circuit.file.CircuitFile;
import loomwright.circuit.file.FileFault;
import loomwright.circuit.file.FileRead;
import loomwright.generator.problem.ShownPath;
import loomwright.worked.Verdict;

/**
 * One circuit file, read and examined.
 *
 * @param file the file as it is shown
 * @param refusals why it is refused; empty if it holds a circuit
 * @param examination the circuit examined, or null if it is refused
 */
public record ExaminedFile(String file, List<String> refusals, Examination examination) {
    /** Reads a file and examines what is in it. Whatever the file holds, it ends here with a reason or a circuit. */
    public static ExaminedFile of(Path path) {
        String shown = ShownPath.of(path);
        if (!Files.exists(path)) {
            return refused(shown, "There is no such file: check its name");
        }
        if (!Files.isRegularFile(path)) {
            return refused(shown, "This is no file that can be read: name a circuit file, or a folder with some");
        }
        try {
            // Before it is read: a file may be larger than the memory.
            if (Files.size(path) > CircuitFile.MOST_BYTES) {
                return refused(shown, "The file is larger than " + CircuitFile.MOST_BYTES / (1024 * 1024)
                        + " MB. No circuit needs so much: is it the right file?");
            }
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(Files.readAllBytes(path))).toString();
            return ofText(shown, text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            return refused(shown, "The file is not UTF-8 text: it is damaged, or no circuit file");
        } catch (IOException e) {
            return refused(shown, "The file cannot be read: see whether you may open it");
        }
    }

    private static ExaminedFile ofText(String shown, String text) {
        FileRead read = CircuitFile.read(text);
        return read.circuit() == null
                ? new ExaminedFile(shown, read.faults().stream().map(FileFault::text).toList(), null)
                : new ExaminedFile(shown, List.of(), Examination.of(read.circuit()));
    }

    private static ExaminedFile refused(String shown, String reason) {
        return new ExaminedFile(shown, List.of(reason), null);
    }

    public boolean isRefused() {
        return examination == null;
    }

    /** Whether it cannot be examined, because figures in it do not go together. */
    public boolean isFaulty() {
        return examination != null && !examination.faults().isEmpty();
    }

    /** Whether a check says stop. */
    public boolean hasStop() {
        return examination != null && examination.count(Verdict.STOP) > 0;
    }
}
