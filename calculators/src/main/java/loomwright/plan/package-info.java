/** From a few answers in plain words to a whole checked circuit, each choice with its reason. Choosing only: every figure is worked out by the calculators. */
package loomwright.plan;
