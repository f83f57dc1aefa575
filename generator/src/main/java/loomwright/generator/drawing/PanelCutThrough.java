package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Units;

/** A panel with an outlet in it, cut through from front to back, with the depth it needs and the depth there is. */
final class PanelCutThrough implements Drawing {
    private static final double FACE = 64;
    private static final double BACK = 74;
    private static final double BEHIND = 270;
    private static final double AXIS = 100;
    private static final double HALF = 26;
    private static final double BOTTOM = 196;

    @Override
    public String name() {
        return "panel-cut-through";
    }

    @Override
    public List<String> takes() {
        return List.of("depth-needed", "clear-depth");
    }

    @Override
    public Picture draw(Given given) {
        double needed = given.number("depth-needed", Units.MILLIMETRE);
        double clear = given.number("clear-depth", Units.MILLIMETRE);
        if (clear < needed) {
            throw given.fault("clear-depth", "must be no less than depth-needed");
        }
        double deepest = BACK + (BEHIND - BACK) * needed / clear;
        Canvas canvas = new Canvas();
        canvas.rectangle(Style.BOX, FACE, 30, BACK - FACE, BOTTOM - 30);
        canvas.rectangle(Style.HATCH, BEHIND, 30, 24, BOTTOM - 30);
        outlet(canvas, BACK + (deepest - BACK) * 0.5, BACK + (deepest - BACK) * 0.72, deepest);
        label(canvas, 62, 18, FACE + 5, 32, "panel");
        label(canvas, 282, 18, 282, 32, "frame");
        label(canvas, 24, AXIS + 60, FACE - 6, AXIS + HALF + 4, "front");
        label(canvas, 116, AXIS + 66, BACK + 7, AXIS + HALF + 6, "nut");
        label(canvas, 150, 52, BACK + 40, AXIS - HALF + 4, "body");
        dimension(canvas, BOTTOM + 18, deepest, "needs " + given.label("depth-needed"));
        dimension(canvas, BOTTOM + 58, BEHIND, "clear " + given.label("clear-depth"));
        return new Picture(
                "An outlet in a panel, cut through",
                "A panel seen from the side with an outlet through it. Its front lies against the panel on the left, a nut holds it from behind. The body,"
                        + " the connectors and the bend of the cable together need " + given.text("depth-needed") + ". To the frame behind, "
                        + given.text("clear-depth") + " are clear.",
                canvas,
                Picture.WIDTH,
                BOTTOM + 86);
    }

    private static void outlet(Canvas canvas, double bodyEnd, double tabEnd, double deepest) {
        canvas.rectangle(Style.SYMBOL, FACE, AXIS - HALF, bodyEnd - FACE, 2 * HALF);
        canvas.rectangle(Style.SOLID, FACE - 8, AXIS - HALF - 9, 8, 2 * HALF + 18);
        canvas.rectangle(Style.SOLID, BACK, AXIS - HALF - 8, 10, 8).rectangle(Style.SOLID, BACK, AXIS + HALF, 10, 8);
        canvas.rectangle(Style.SOLID_ACCENT, bodyEnd, AXIS - 14, tabEnd - bodyEnd, 6);
        canvas.rectangle(Style.SOLID, bodyEnd, AXIS + 8, tabEnd - bodyEnd, 6);
        bend(canvas, Style.PLUS, tabEnd, AXIS - 11, deepest - 2);
        bend(canvas, Style.MINUS, tabEnd, AXIS + 11, deepest - 14);
    }

    private static void bend(Canvas canvas, Style style, double from, double y, double deepest) {
        double middle = (from + deepest) / 2;
        canvas.path(style, new Outline().move(from, y).curve(middle, y, deepest, y, deepest, y + 30).line(deepest, BOTTOM));
    }

    private static void label(Canvas canvas, double x, double y, double toX, double toY, String word) {
        canvas.line(Style.FAINT, x, toY < y ? y - 13 : y + 4, toX, toY);
        canvas.text(x, y, Anchor.MIDDLE, Lettering.SMALL, word);
    }

    private static void dimension(Canvas canvas, double y, double to, String words) {
        canvas.line(Style.FAINT, BACK, BOTTOM + 2, BACK, y + 5).line(Style.FAINT, to, BOTTOM + 2, to, y + 5);
        canvas.line(Style.FAINT, BACK, y, to, y);
        canvas.arrowHead(Style.SOLID, BACK, y, -1, 0).arrowHead(Style.SOLID, to, y, 1, 0);
        canvas.text((BACK + to) / 2, y + 18, Anchor.MIDDLE, Lettering.SMALL_STRONG, words);
    }
}
