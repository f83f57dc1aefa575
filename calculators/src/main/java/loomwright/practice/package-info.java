/**
 * A working as an exercise: which of its steps can be left blank, what a reader's figure for a blank is worth, the same steps with new round
 * numbers, and the same steps with one known slip in them.
 *
 * <p>All of it comes from the steps and the slips of the working. Nothing is written for an exercise alone.
 */
package loomwright.practice;
