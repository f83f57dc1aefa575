/** Loads: the four electrical quantities, and what a device draws from a 12 V supply. */
package loomwright.load;
