/** The circuit as a radial network: voltages, currents and losses at every point, and why there may be none. */
package loomwright.circuit.solve;
