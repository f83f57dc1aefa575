/** Worked examples: runs their calculators, holds the results against the pins, and gives results to the text by name. */
package loomwright.generator.example;
