package loomwright.picture;

/**
 * A line of text with its place.
 *
 * @param x where its anchor stands
 * @param y its base line
 */
record Label(double x, double y, Anchor anchor, Lettering lettering, String text) {
    private static final double ASCENT = 0.78;
    private static final double DESCENT = 0.24;

    /** The space it takes, by estimate. */
    Box box() {
        double width = lettering.width(text);
        double left =
                switch (anchor) {
                    case START -> x;
                    case MIDDLE -> x - width / 2;
                    case END -> x - width;
                };
        return new Box(left, y - ASCENT * lettering.size(), left + width, y + DESCENT * lettering.size());
    }
}
