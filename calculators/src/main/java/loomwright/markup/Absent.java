package loomwright.markup;

import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Field;

/**
 * The fields that do not belong to the way chosen, so that nobody need look at them: the working never asked for them.
 *
 * @param keys their keys, with a blank before and behind each
 */
public record Absent(String keys) {
    /** Every field belongs. */
    public static final Absent NONE = new Absent(" ");

    /** What a working did not ask for. */
    public static Absent of(Description description, Entries entries) {
        StringBuilder keys = new StringBuilder(" ");
        for (Field field : description.fields()) {
            if (!entries.isAsked(field.key())) {
                keys.append(field.key()).append(' ');
            }
        }
        return new Absent(keys.toString());
    }

    /** Whether a field does not belong. */
    public boolean has(String fieldKey) {
        return keys.contains(" " + fieldKey + " ");
    }
}
