package loomwright.picture;

/**
 * A finished picture with the words that stand for it.
 *
 * @param title its title
 * @param description what it shows, for a reader who cannot see it
 * @param body its elements as SVG text
 * @param width the width of its canvas
 * @param height the height of its canvas
 * @param figures the figures it shows, or {@link FigureTable#NONE}
 * @param fullSize whether it comes out on paper at {@link #UNITS_PER_MILLIMETRE}; its width is then {@link #WIDTH}
 */
public record Picture(
        String title, String description, String body, double width, double height, FigureTable figures, boolean fullSize) {
    /** Scale of a picture that is printed at full size: the style sheet makes {@link #WIDTH} 160 mm wide. */
    public static final double UNITS_PER_MILLIMETRE = 2;

    /** A canvas of this width is drawn about one to one on the smallest phone. */
    public static final double WIDTH = 320;

    /** A picture that shows no figures beyond its labels. */
    public Picture(String title, String description, Canvas canvas, double width, double height) {
        this(title, description, canvas.body(), width, height, FigureTable.NONE, false);
    }

    /** The same picture under the words of the lesson that shows it. */
    public Picture named(String newTitle, String newDescription) {
        return new Picture(newTitle, newDescription, body, width, height, figures, fullSize);
    }

    /** The same picture with the table of its figures. */
    public Picture with(FigureTable newFigures) {
        return new Picture(title, description, body, width, height, newFigures, fullSize);
    }

    /** The same picture, printed at full size. */
    public Picture atFullSize() {
        if (width != WIDTH) {
            throw new IllegalStateException("a picture at full size is " + Coordinate.text(WIDTH) + " units wide, not " + Coordinate.text(width));
        }
        return new Picture(title, description, body, width, height, figures, true);
    }

    /**
     * The picture as an {@code svg} element.
     *
     * @param key begins every id in it; unique in the page
     */
    public String svg(String key) {
        String id = Escape.text(key);
        return "<svg class=\"drawing" + (fullSize ? " full-size" : "") + "\" role=\"img\" aria-labelledby=\"" + id + "-t\" aria-describedby=\"" + id
                + "-d\" viewBox=\"0 0 " + Coordinate.text(width) + " " + Coordinate.text(height) + "\"><title id=\"" + id + "-t\">" + Escape.text(title)
                + "</title><desc id=\"" + id + "-d\">" + Escape.text(description) + "</desc>" + body + "</svg>";
    }
}
