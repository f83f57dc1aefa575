package loomwright.generator.content;

import java.util.Locale;

/** Turns a heading into the name of its anchor: {@code Ohm's law} becomes {@code ohms-law}. */
public final class Slug {
    private Slug() {}

    public static String of(String heading) {
        StringBuilder slug = new StringBuilder();
        for (char c : heading.toLowerCase(Locale.ROOT).toCharArray()) {
            if (Character.isLetterOrDigit(c)) {
                slug.append(c);
            } else if (c != '\'' && c != '’' && slug.length() > 0 && slug.charAt(slug.length() - 1) != '-') {
                slug.append('-');
            }
        }
        int length = slug.length();
        return length > 0 && slug.charAt(length - 1) == '-' ? slug.substring(0, length - 1) : slug.toString();
    }
}
