package loomwright.generator.content;

import loomwright.circuit.check.Examination;
import loomwright.generator.problem.SourceFile;

/**
 * A circuit of the content folder, examined.
 *
 * @param key the name of its file, without the ending
 * @param file the file
 * @param examination the circuit, and what was found
 */
public record CircuitText(String key, SourceFile file, Examination examination) {}
