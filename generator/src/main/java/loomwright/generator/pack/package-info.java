/** A whole site as one zip that runs from a stick. */
package loomwright.generator.pack;
