package loomwright.picture;

/** How a line or an area looks; each is a class of the style sheet. */
public enum Style {
    /** A line in the colour of the text. */
    INK("ink"),
    /** A line in the accent colour: what the picture is about. */
    ACCENT("accent"),
    /** Grid, dimension and help lines. */
    FAINT("faint"),
    /** Positive conductor. */
    PLUS("plus"),
    /** Negative conductor. */
    MINUS("minus"),
    /** A limit or a fault. */
    WARN("warn"),
    /** An area in the colour of the text. */
    SOLID("solid"),
    /** An area in the accent colour. */
    SOLID_ACCENT("solid accent"),
    /** An area in the panel colour. */
    SHADE("shade"),
    /** An area in the panel colour with an outline. */
    BOX("ink shade"),
    /** An area that is out of bounds. */
    HATCH("hatch"),
    /** An area in the page colour. */
    PAPER("paper"),
    /** An area in the page colour with an outline: the inside of a symbol over a line. */
    SYMBOL("ink paper");

    private final String classes;

    Style(String classes) {
        this.classes = classes;
    }

    String classes() {
        return classes;
    }
}
