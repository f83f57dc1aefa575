package loomwright.markup;

/** Small repairs to texts, so that they read well where they are put. */
public final class Words {
    /** From a capital to its small letter. The standard library's way brings tables of all alphabets into the page program. */
    private static final int CAPITAL = 'a' - 'A';

    private Words() {}

    /** The text as a sentence: a full stop at its end if it has no mark there. */
    public static String sentence(String text) {
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
    public static String capital(String text) {
        return text.isEmpty() || !isSmall(text.charAt(0)) ? text : (char) (text.charAt(0) - CAPITAL) + text.substring(1);
    }

    /** The text with its first letter small, unless the word is an abbreviation. */
    public static String small(String text) {
        boolean abbreviation = text.length() > 1 && isCapital(text.charAt(1));
        return text.isEmpty() || abbreviation || !isCapital(text.charAt(0))
                ? text
                : (char) (text.charAt(0) + CAPITAL) + text.substring(1);
    }

    private static boolean isSmall(char c) {
        return c >= 'a' && c <= 'z';
    }

    private static boolean isCapital(char c) {
        return c >= 'A' && c <= 'Z';
    }
}
