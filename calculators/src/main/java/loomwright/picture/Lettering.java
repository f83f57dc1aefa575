package loomwright.picture;

import java.util.List;

/** How a text looks; each is a class of the style sheet. */
public enum Lettering {
    PLAIN("", 16, false),
    STRONG("strong", 16, true),
    SMALL("small", 14, false),
    SMALL_STRONG("small strong", 14, true),
    SMALL_ACCENT("small accent", 14, false);

    private final String classes;
    private final double size;
    private final boolean bold;

    Lettering(String classes, double size, boolean bold) {
        this.classes = classes;
        this.size = size;
        this.bold = bold;
    }

    String classes() {
        return classes;
    }

    /** The height of the letters, in units of the canvas. */
    public double size() {
        return size;
    }

    /** The distance between two base lines. */
    public double lineHeight() {
        return size * 1.2;
    }

    /** The estimated width of {@code text}. */
    public double width(String text) {
        return size * TextWidth.ems(text, bold);
    }

    /** The estimated width of the widest of several lines. */
    double widest(List<String> lines) {
        double widest = 0;
        for (String line : lines) {
            widest = Math.max(widest, width(line));
        }
        return widest;
    }
}
