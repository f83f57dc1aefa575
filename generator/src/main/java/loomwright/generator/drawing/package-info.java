/** Drawings that a lesson can name: SVG files of the content, and those that are worked out from the values a lesson gives. */
package loomwright.generator.drawing;
