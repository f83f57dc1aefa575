package loomwright.drawing;

import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Style;

/** The number of a wire, in a ring on the wire. */
final class WireNumber {
    private static final double RADIUS = 12;

    private WireNumber() {}

    static void draw(Canvas canvas, double x, double y, int number) {
        canvas.circle(Style.SYMBOL, x, y, RADIUS);
        canvas.text(x, y + 5, Anchor.MIDDLE, Lettering.SMALL_STRONG, Integer.toString(number));
    }
}
