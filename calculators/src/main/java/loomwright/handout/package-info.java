/**
 * Question sheets for a room of people: each person the same questions with other numbers, a key with every working, a register, and the
 * code that brings a sheet back.
 *
 * <p>The command line and the page write the same sheets: all that is chosen by the seed is chosen here.
 */
package loomwright.handout;
