/**
 * A workshop day for any number of people: what it holds hour by hour, and what has to stand there, each with the rule it follows from.
 *
 * <p>The rules are <em>common practice</em> of such days. Page, command and paper show the same plan.
 */
package loomwright.workshop;
