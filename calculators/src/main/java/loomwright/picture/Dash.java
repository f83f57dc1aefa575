package loomwright.picture;

/** The pattern of a line, so that lines differ without colour. */
public enum Dash {
    NONE(""),
    LONG("12 6"),
    SHORT("5 5"),
    DOTS("1 5"),
    LONG_SHORT("12 5 2 5");

    private final String pattern;

    Dash(String pattern) {
        this.pattern = pattern;
    }

    String pattern() {
        return pattern;
    }
}
