/** Shows the site while an author writes: builds into memory, serves it on this machine only, and reloads the page after each save. */
package loomwright.generator.preview;
