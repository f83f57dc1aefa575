/** The list of all calculators. */
package loomwright.catalogue;
