package loomwright.table;

import loomwright.quantity.Unit;

/**
 * A column of a table.
 *
 * @param key its name, such as {@code resistance}
 * @param unit the unit of its figures, or null if it holds text
 */
public record Column(String key, Unit unit) {
    /** Whether it says where a row comes from, and not what it says. */
    public boolean isOfTheSource() {
        return key.equals("source") || key.equals("locus") || key.equals("standing");
    }
}
