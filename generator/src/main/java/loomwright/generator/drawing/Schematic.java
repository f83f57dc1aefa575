package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Heading;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Style;
import loomwright.picture.Symbol;
import loomwright.picture.Wrap;

/** Draws conductors, symbols and their labels onto a canvas; where they stand is the caller's choice. */
final class Schematic {
    static final Lettering LETTERING = Lettering.SMALL;
    private static final double GAP = 5;

    private final Canvas canvas;

    public Schematic(Canvas canvas) {
        this.canvas = canvas;
    }

    /** A conductor through points given as x, y, x, y and so on. */
    public Schematic conductor(Style style, double... points) {
        Outline outline = new Outline().move(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            outline.line(points[i], points[i + 1]);
        }
        canvas.path(style, outline);
        return this;
    }

    /** A symbol without words. */
    public Schematic symbol(Symbol symbol, double x, double y, Heading heading) {
        symbol.draw(canvas, x, y, heading);
        return this;
    }

    /** A symbol with its label, cut into lines no wider than {@code width}. */
    public Schematic symbol(Symbol symbol, double x, double y, Heading heading, Side side, String label, double width) {
        symbol.draw(canvas, x, y, heading);
        double halfWidth = heading.isLevel() ? symbol.reach() : symbol.breadth();
        double halfHeight = heading.isLevel() ? symbol.breadth() : symbol.reach();
        label(x, y, halfWidth, halfHeight, side, Wrap.lines(label, LETTERING, width));
        return this;
    }

    private void label(double x, double y, double halfWidth, double halfHeight, Side side, List<String> lines) {
        double more = (lines.size() - 1) * LETTERING.lineHeight();
        switch (side) {
            case ABOVE -> canvas.text(x, y - halfHeight - GAP - 2 - more, Anchor.MIDDLE, LETTERING, lines);
            case BELOW -> canvas.text(x, y + halfHeight + GAP + 12, Anchor.MIDDLE, LETTERING, lines);
            case LEFT -> canvas.text(x - halfWidth - GAP, y + 5 - more / 2, Anchor.END, LETTERING, lines);
            case RIGHT -> canvas.text(x + halfWidth + GAP, y + 5 - more / 2, Anchor.START, LETTERING, lines);
            default -> throw new IllegalArgumentException("no side");
        }
    }

    /** A joint of conductors. */
    public Schematic junction(double x, double y) {
        canvas.circle(Style.SOLID, x, y, 4);
        return this;
    }

    /** An arrow on a conductor: the way the current goes. */
    public Schematic current(double x, double y, Heading heading) {
        canvas.arrowHead(Style.SOLID, x + 7 * heading.dx(), y + 7 * heading.dy(), heading.dx(), heading.dy());
        return this;
    }

    /** The sign of a conductor, so that it does not rest on colour. */
    public Schematic sign(boolean positive, double x, double y) {
        canvas.text(x, y, Anchor.MIDDLE, Lettering.STRONG, positive ? "+" : "\u2212");
        return this;
    }
}
