/** The page First job as HTML, the same in the browser and in the generator: its questions, one thing a screen, and the plan that comes of them. */
package loomwright.plan.page;
