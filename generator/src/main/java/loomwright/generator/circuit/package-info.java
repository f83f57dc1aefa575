/** Circuit files on the command line: found, read within limits, examined, and told in plain lines. */
package loomwright.generator.circuit;
