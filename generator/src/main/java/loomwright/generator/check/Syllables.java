package loomwright.generator.check;

import java.util.Locale;
import java.util.regex.Pattern;

/** Counts the syllables of an English word by its groups of vowels. */
final class Syllables {
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");
    /** A last e that is not heard: {@code fuse}, {@code wires}, {@code used}; but not {@code cable}, {@code switches}, {@code rated}. */
    private static final Pattern SILENT_END = Pattern.compile("(?<![aeiouy])(?<!.[^aeiouy]l)e$|(?<=[^aeiouysxzgchl]|[^cs]h|[aeiouy]l)es$|(?<=[^aeiouytd])ed$");

    private Syllables() {}

    /** At least one; a number counts as one. */
    static int of(String word) {
        String heard = word.toLowerCase(Locale.ROOT).replace("'", "");
        boolean silent = SILENT_END.matcher(heard).find();
        int groups = (int) VOWELS.matcher(heard).results().count();
        return Math.max(1, groups - (silent ? 1 : 0));
    }
}
