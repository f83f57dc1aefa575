package loomwright.circuit.file;

import java.util.List;
import loomwright.circuit.Circuit;

/**
 * What came of reading a file or a link: the circuit, or why it is refused. The present work stays either way.
 *
 * @param circuit the circuit, or null if there are faults
 * @param faults the faults; empty if there is a circuit
 */
public record FileRead(Circuit circuit, List<FileFault> faults) {
    static FileRead refused(FileFault fault) {
        return new FileRead(null, List.of(fault));
    }
}
