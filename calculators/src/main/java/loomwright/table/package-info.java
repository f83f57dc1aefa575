/** Published tables: read from the files in {@code content/tables}, looked up by row, never interpolated. */
package loomwright.table;
