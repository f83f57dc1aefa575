/** Checks finished pages: links, anchors, ids, headings, pictures, tables, and anything that would reach outside the site. */
package loomwright.generator.check;
