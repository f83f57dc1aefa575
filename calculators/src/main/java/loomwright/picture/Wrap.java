package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/** Cuts a text into lines at its spaces. */
final class Wrap {
    private Wrap() {}

    /** Lines no wider than {@code width}, unless a single word is. A no-break space does not part. */
    static List<String> lines(String text, Lettering lettering, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words(text)) {
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

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        int from = 0;
        for (int i = 0; i <= text.length(); i++) {
            if (i == text.length() || text.charAt(i) == ' ') {
                if (i > from) {
                    words.add(text.substring(from, i));
                }
                from = i + 1;
            }
        }
        return words;
    }
}
