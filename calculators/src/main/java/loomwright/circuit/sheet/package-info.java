/** The sheets of a circuit as data: schedule, parts and cut list, labels, test sheet, and what readings say. */
package loomwright.circuit.sheet;
