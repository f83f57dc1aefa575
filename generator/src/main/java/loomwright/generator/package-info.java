/** The command line of the generator: build, proof, show. */
package loomwright.generator;
