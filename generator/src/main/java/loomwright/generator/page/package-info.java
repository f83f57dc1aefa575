/**
 * Writes pages: blocks of a lesson as HTML, records for the templates, and the pages the generator fills. The only package that knows
 * Mustache.
 */
package loomwright.generator.page;
