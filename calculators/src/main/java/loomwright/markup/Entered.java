package loomwright.markup;

import java.util.Map;
import loomwright.worked.Field;

/** What a field holds. */
final class Entered {
    private Entered() {}

    /** What was entered, or what is taken if nothing was; empty if the field stays empty. */
    static String text(Field field, Map<String, String> entries) {
        String text = entries.get(field.key());
        if (text != null && !text.isBlank()) {
            return text.strip();
        }
        return field.usual() == null ? "" : field.usual();
    }
}
