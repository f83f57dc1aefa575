/** Metric or American: which units a reader is shown, and how a figure in one becomes a figure in the other. */
package loomwright.units;
