package loomwright.markup;

/** Small repairs to texts, so that they read well where they are put. */
final class Words {
    private Words() {}

    /** The text as a sentence: a full stop at its end if it has no mark there. */
    static String sentence(String text) {
        String stripped = text.strip();
        if (stripped.isEmpty()) {
            return "";
        }
        char last = stripped.charAt(stripped.length() - 1);
        return last == '.' || last == '?' || last == '!' ? stripped : stripped + ".";
    }

    /** Two texts as sentences, one after the other; an empty one is left out. */
    static String sentences(String first, String second) {
        String start = sentence(first);
        String rest = sentence(second);
        return start.isEmpty() || rest.isEmpty() ? start + rest : start + " " + rest;
    }

    /** The text with its first letter as a capital. */
    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }

    /** The text with its first letter small, unless the word is an abbreviation. */
    static String small(String text) {
        boolean abbreviation = text.length() > 1 && text.charAt(1) >= 'A' && text.charAt(1) <= 'Z';
        return text.isEmpty() || abbreviation
                ? text
                : text.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
