/** Question sheets as files: what was chosen, the pages, and the browser that prints them. */
package loomwright.generator.handout;
