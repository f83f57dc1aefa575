/**
 * Formulas as data: one expression tree gives the value, the symbolic form, the form with numbers put in, and a check of units.
 *
 * <p>No formula text is written by hand anywhere else, so the working shown cannot drift from the computation.
 */
package loomwright.formula;
