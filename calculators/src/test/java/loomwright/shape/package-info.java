/** The shape of what is answered and drawn: which words, steps, checks and marks, in which order, without the figures. */
package loomwright.shape;
