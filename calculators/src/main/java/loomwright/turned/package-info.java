/**
 * The question turned round: which entry of a calculator gives the result that is wanted.
 *
 * <p>Works with every calculator through its description and its working. Where the steps are formulas that can be undone, the answer is
 * worked out and the steps are shown; where a table or a series of sizes decides, the sizes are tried one after another.
 */
package loomwright.turned;
