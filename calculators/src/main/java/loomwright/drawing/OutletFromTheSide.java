package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Dash;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Style;

/** An outlet in an upright panel, cut through: the cap with its hinge on top, and the loop of cable from which water drips. */
final class OutletFromTheSide implements Drawing {
    private static final double FRONT = 118;
    private static final double BACK = 128;
    private static final double TOP = 84;
    private static final double BOTTOM = 132;

    @Override
    public String name() {
        return "outlet-from-the-side";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Canvas canvas = new Canvas();
        canvas.rectangle(Style.BOX, FRONT, 26, BACK - FRONT, 54);
        canvas.rectangle(Style.BOX, FRONT, 136, BACK - FRONT, 90);
        canvas.rectangle(Style.BOX, FRONT, TOP, 74, BOTTOM - TOP);
        canvas.rectangle(Style.BOX, 108, TOP - 8, 10, BOTTOM - TOP + 16);
        cap(canvas);
        cable(canvas);
        canvas.text(8, 20, Anchor.START, Lettering.SMALL, "outside");
        canvas.text(BACK + 8, 20, Anchor.START, Lettering.SMALL, "behind the panel");
        canvas.text(154, 113, Anchor.MIDDLE, Lettering.SMALL, "outlet");
        return new Picture(
                "An outlet in an upright panel, from the side",
                "An upright panel cut through, with an outlet in it that faces left. Its cap hangs from a hinge above the hole, and drops run off it"
                        + " clear of the hole. Behind the panel the cable leaves the outlet, goes down in a loop and up again; a drop falls from the"
                        + " lowest point of the loop.",
                canvas,
                Picture.WIDTH,
                252);
    }

    private static void cap(Canvas canvas) {
        canvas.circle(Style.SYMBOL, 103, TOP - 7, 4);
        canvas.path(Style.ACCENT, new Outline().move(101, TOP - 4).line(74, BOTTOM + 2));
        drop(canvas, 66, BOTTOM + 18);
        drop(canvas, 60, BOTTOM + 38);
        canvas.text(8, 62, Anchor.START, Lettering.SMALL, "hinge on top");
        canvas.text(8, 108, Anchor.START, Lettering.SMALL, "cap shuts");
        canvas.text(8, 125, Anchor.START, Lettering.SMALL, "by itself");
    }

    private static void cable(Canvas canvas) {
        canvas.rectangle(Style.SOLID, 192, 100, 8, 16);
        canvas.path(Style.PLUS, new Outline().move(200, 108).curve(236, 108, 214, 196, 240, 196).curve(266, 196, 260, 120, 260, 34));
        drop(canvas, 240, 216);
        canvas.text(188, 242, Anchor.START, Lettering.SMALL, "drip loop");
        canvas.path(Style.FAINT, Dash.SHORT, new Outline().move(214, 108).line(300, 108));
        canvas.text(268, 130, Anchor.START, Lettering.SMALL, "below");
        canvas.text(268, 147, Anchor.START, Lettering.SMALL, "the");
        canvas.text(268, 164, Anchor.START, Lettering.SMALL, "outlet");
    }

    private static void drop(Canvas canvas, double x, double y) {
        canvas.path(Style.SOLID, new Outline().move(x, y - 9).line(x + 4, y).line(x - 4, y).close());
        canvas.circle(Style.SOLID, x, y + 1, 4.2);
    }
}
