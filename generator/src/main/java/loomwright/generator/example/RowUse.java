package loomwright.generator.example;

/**
 * A row of a table that something on the site relies on.
 *
 * @param table the key of the table
 * @param row what the row is called
 */
public record RowUse(String table, String row) {}
