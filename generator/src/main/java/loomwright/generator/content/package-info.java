/** Reads the content folder: front matter, blocks, sources, tables, glossary, scenario. Every mistake becomes a problem with its place. */
package loomwright.generator.content;
