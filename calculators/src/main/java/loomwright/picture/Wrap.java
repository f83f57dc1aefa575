package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/** Cuts a text into lines at its spaces. */
public final class Wrap {
    private Wrap() {}

    /** Lines no wider than {@code width}. A no-break space does not part, and a word is broken only if it is wider than a line. */
    public static List<String> lines(String text, Lettering lettering, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words(text, lettering, width)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && lettering.width(longer) > width) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    private static List<String> words(String text, Lettering lettering, double width) {
        List<String> words = new ArrayList<>();
        int from = 0;
        for (int i = 0; i <= text.length(); i++) {
            if (i == text.length() || text.charAt(i) == ' ') {
                addBroken(words, text.substring(from, i), lettering, width);
                from = i + 1;
            }
        }
        return words;
    }

    /** Adds a word, in pieces if it is too wide; a piece has at least one letter, however narrow the room. */
    private static void addBroken(List<String> words, String word, Lettering lettering, double width) {
        String rest = word;
        while (!rest.isEmpty()) {
            int fits = rest.length();
            while (fits > 1 && lettering.width(rest.substring(0, fits)) > width) {
                fits--;
            }
            words.add(rest.substring(0, fits));
            rest = rest.substring(fits);
        }
    }
}
