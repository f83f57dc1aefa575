package loomwright.markup;

import java.util.List;
import java.util.Map;
import loomwright.worked.Field;

/**
 * The fields of one of several like things, one behind the other: "Load 3: power", "Load 3: current".
 *
 * @param name what their labels begin with, such as "Load 3"; empty for a field by itself
 * @param from the place of the first of them
 * @param to the place behind the last
 */
record FieldGroup(String name, int from, int to) {

    /** The group of the field at a place. */
    static FieldGroup at(List<Field> fields, int from) {
        String name = name(fields.get(from));
        int to = from + 1;
        while (!name.isEmpty() && to < fields.size() && name(fields.get(to)).equals(name)) {
            to++;
        }
        return new FieldGroup(name, from, to);
    }

    /** Whether nothing was entered in any of them but what is taken anyway. */
    boolean isEmpty(List<Field> fields, Map<String, String> entries) {
        for (int i = from; i < to; i++) {
            String usual = fields.get(i).usual();
            if (!Entered.text(fields.get(i), entries).equals(usual == null ? "" : usual)) {
                return false;
            }
        }
        return !name.isEmpty();
    }

    /** Whether a group is the first of its kind, "Load 1": that one is always wanted. */
    boolean isFirst() {
        return name.charAt(name.length() - 1) == '1';
    }

    private static String name(Field field) {
        String label = field.label();
        int colon = label.indexOf(':');
        boolean numbered = colon > 1 && label.charAt(colon - 1) <= '9' && label.charAt(colon - 2) == ' ';
        return numbered ? label.substring(0, colon) : "";
    }
}
