package loomwright.worked;

import java.util.LinkedHashMap;
import java.util.Map;

/** What is entered, by field, written down in the order in which it is read: a key, its text, the next key. */
public final class Pairs {
    private Pairs() {}

    public static Map<String, String> of(String... keysAndTexts) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int i = 0; i < keysAndTexts.length; i += 2) {
            texts.put(keysAndTexts[i], keysAndTexts[i + 1]);
        }
        return texts;
    }
}
