/** A circuit as a file (JSON of our own, {@code loomwright-circuit} version 1) and as the end of a link. */
package loomwright.circuit.file;
