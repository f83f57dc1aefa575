package loomwright.generator.content;

import java.util.Locale;
import java.util.Set;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.Problems;

/**
 * What a file or folder may be called that gives a page its address: a name that every system can keep, that every browser reads alike,
 * and that means nothing else in an address.
 */
final class FileNames {
    private static final int LONGEST = 60;
    /** Names that stand for a device on some systems. */
    private static final Set<String> RESERVED = Set.of(
            "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4",
            "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

    private FileNames() {}

    /**
     * Whether a key can stand in an address; if not, a problem is reported.
     *
     * @param key the name without its ending
     * @param shown the file or folder as messages call it
     */
    static boolean isSound(String key, String shown, Problems problems) {
        if (RESERVED.contains(key)) {
            problems.add(Problem.ofFile(shown, "\"" + key + "\" is the name of a device on some systems", "Give it another name."));
            return false;
        }
        if (!isPlain(key)) {
            problems.add(Problem.ofFile(
                    shown,
                    "the name \"" + key.replace('\n', '\uFFFD') + "\" cannot be part of an address",
                    "Use small letters a to z, digits and single hyphens, at most " + LONGEST + " of them, such as " + plain(key) + "."));
            return false;
        }
        return true;
    }

    private static boolean isPlain(String key) {
        boolean plain = !key.isEmpty() && key.length() <= LONGEST && !key.startsWith("-") && !key.endsWith("-") && !key.contains("--");
        for (int i = 0; i < key.length() && plain; i++) {
            plain = isPlain(key.charAt(i)) || key.charAt(i) == '-';
        }
        return plain;
    }

    private static boolean isPlain(char c) {
        return c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
    }

    /** A name like it that would do. */
    private static String plain(String key) {
        StringBuilder plain = new StringBuilder();
        for (char c : key.toLowerCase(Locale.ROOT).toCharArray()) {
            if (isPlain(c)) {
                plain.append(c);
            } else if (plain.length() > 0 && plain.charAt(plain.length() - 1) != '-') {
                plain.append('-');
            }
        }
        String cut = plain.substring(0, Math.min(LONGEST, plain.length()));
        String ended = cut.endsWith("-") ? cut.substring(0, cut.length() - 1) : cut;
        return ended.isEmpty() || RESERVED.contains(ended) ? "my-page" : ended;
    }
}
