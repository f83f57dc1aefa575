/** Mistakes planted at every place of right circuits, and what the examination says of them. */
package loomwright.circuit.hazard;
