/**
 * A calculator, and the working it produces: ordered steps from formula trees, results, findings, known slips, and what to ask next.
 */
package loomwright.worked;
