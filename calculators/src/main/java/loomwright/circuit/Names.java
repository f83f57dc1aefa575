package loomwright.circuit;

import java.util.List;

/** What parts and circuits may be called. */
final class Names {
    static final int LONGEST_NAME = 80;
    static final int LONGEST_ID = 40;
    static final int LONGEST_READING = 40;

    private Names() {}

    static void checkId(String id, List<PartFault> faults) {
        if (!isId(id)) {
            faults.add(new PartFault(
                    "", "id", "A part needs an id of 1 to " + LONGEST_ID
                            + " small letters, digits and hyphens that begins with a letter: this one does not fit"));
        }
    }

    static boolean isId(String id) {
        if (id.isEmpty() || id.length() > LONGEST_ID || id.charAt(0) < 'a' || id.charAt(0) > 'z') {
            return false;
        }
        for (int i = 0; i < id.length(); i++) {
            char c = id.charAt(i);
            if (!(c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-')) {
                return false;
            }
        }
        return true;
    }

    static void checkName(String id, String name, List<PartFault> faults) {
        String fault = nameFault(name);
        if (fault != null) {
            faults.add(new PartFault(id, "name", "The name " + fault));
        }
    }

    static void checkReading(String id, String reading, List<PartFault> faults) {
        String fault = textFault(reading, LONGEST_READING);
        if (fault != null) {
            faults.add(new PartFault(id, "reading", "The reading " + fault));
        }
    }

    /** What is wrong with a name, to follow "The name", or null. */
    static String nameFault(String name) {
        return textFault(name, LONGEST_NAME);
    }

    /** What is wrong with a text that is kept as it was typed, or null. */
    static String textFault(String text, int longest) {
        if (text.length() > longest) {
            return "is longer than " + longest + " characters: shorten it";
        }
        for (int i = 0; i < text.length(); i++) {
            if (isUnprintable(text.charAt(i)) || isHalfACharacter(text, i)) {
                return "holds a character that cannot be printed: type it again";
            }
        }
        return null;
    }

    /** One half of a pair of code units without the other: it cannot be written to a file. */
    private static boolean isHalfACharacter(String name, int i) {
        char c = name.charAt(i);
        if (c >= '\ud800' && c <= '\udbff') {
            return i + 1 == name.length() || name.charAt(i + 1) < '\udc00' || name.charAt(i + 1) > '\udfff';
        }
        return c >= '\udc00' && c <= '\udfff' && (i == 0 || name.charAt(i - 1) < '\ud800' || name.charAt(i - 1) > '\udbff');
    }

    /** Control characters, and those that turn the direction of writing, with which a label can be made to lie. */
    private static boolean isUnprintable(char c) {
        return c < ' ' || c >= 0x7f && c < 0xa0 || c >= '\u202a' && c <= '\u202e' || c >= '\u2066' && c <= '\u2069' || c == '\u2028'
                || c == '\u2029';
    }
}
