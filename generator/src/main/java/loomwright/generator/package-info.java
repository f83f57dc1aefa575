/** The command line of the generator: build, check, preview. */
package loomwright.generator;
