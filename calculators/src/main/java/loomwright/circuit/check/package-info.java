/** The checks of a whole circuit, each with figure, limit, source and what to change; and the smallest size that passes. */
package loomwright.circuit.check;
