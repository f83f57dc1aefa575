package loomwright.browser;

import org.teavm.jso.JSBody;

/**
 * What this device remembers: rungs climbed and lessons read, each a word such as {@code bench-drop:2} or {@code lesson:08-voltage-drop},
 * with spaces between. Kept under one name in the storage of the browser; nothing else is stored and nothing leaves the page. Where the
 * browser forbids storage, it lasts as long as the page.
 */
final class Progress {
    private static final String NAME = "loomwright-progress";

    private static String words = "";
    private static boolean remembered = true;

    private Progress() {}

    /** Whether the browser keeps what it is given. */
    static boolean isRemembered() {
        read();
        return remembered;
    }

    static boolean has(String word) {
        read();
        return (" " + words + " ").indexOf(" " + word + " ") >= 0;
    }

    static void add(String word) {
        if (!has(word)) {
            write(words.isEmpty() ? word : words + " " + word);
        }
    }

    static void remove(String word) {
        read();
        write((" " + words + " ").replace(" " + word + " ", " ").strip());
    }

    static void forget() {
        words = "";
        remembered = erase(NAME);
    }

    private static void read() {
        String kept = keptText(NAME);
        remembered = kept != null;
        words = kept == null ? words : kept;
    }

    private static void write(String text) {
        words = text;
        remembered = keep(NAME, text);
    }

    @JSBody(params = "name", script = "try { return window.localStorage.getItem(name) || ''; } catch (refused) { return null; }")
    private static native String keptText(String name);

    @JSBody(
            params = {"name", "text"},
            script = "try { window.localStorage.setItem(name, text); return true; } catch (refused) { return false; }")
    private static native boolean keep(String name, String text);

    @JSBody(params = "name", script = "try { window.localStorage.removeItem(name); return true; } catch (refused) { return false; }")
    private static native boolean erase(String name);
}
