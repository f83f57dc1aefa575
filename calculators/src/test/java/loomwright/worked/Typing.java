package loomwright.worked;

import java.util.HashMap;
import java.util.Map;

/** What a reader types in a test, by field; each entry reads {@code field=text}, and of two for one field the later counts. */
public final class Typing {
    private Typing() {}

    public static Map<String, String> of(String... entries) {
        Map<String, String> typed = new HashMap<>();
        for (String entry : entries) {
            int equals = entry.indexOf('=');
            typed.put(entry.substring(0, equals), entry.substring(equals + 1));
        }
        return typed;
    }
}
