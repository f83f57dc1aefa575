package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Style;

/** Why the negative lead comes off first: a spanner that slips from each post to the metal around the battery. */
final class NegativeLeadFirst implements Drawing {
    private static final double LEFT = 22;
    private static final double RIGHT = 296;
    private static final double MINUS = 124;
    private static final double PLUS = 196;
    private static final double PANEL = 196;

    @Override
    public String name() {
        return "negative-lead-first";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Canvas canvas = new Canvas();
        scene(canvas, 0, "Spanner on the negative post");
        spanner(canvas, MINUS, LEFT + 3, 48);
        canvas.text(160, 178, Anchor.MIDDLE, Lettering.SMALL, "both ends on minus: nothing flows");
        scene(canvas, PANEL, "Spanner on the positive post");
        loop(canvas, PANEL);
        spanner(canvas, PLUS, RIGHT - 3, PANEL + 48);
        canvas.text(160, PANEL + 188, Anchor.MIDDLE, Lettering.SMALL, "plus to minus: short circuit");
        return new Picture(
                "Why the negative lead comes off first",
                "Two scenes of a battery in a metal body. The negative post is strapped to the body. Above, a spanner on the negative post slips"
                        + " and touches the body: both its ends are on minus and nothing flows. Below, a spanner on the positive post touches the"
                        + " body: arrows show a current from the positive post through spanner, body and strap back to the negative post.",
                canvas,
                Picture.WIDTH,
                PANEL + 198);
    }

    private static void scene(Canvas canvas, double top, String title) {
        canvas.text(160, top + 18, Anchor.MIDDLE, Lettering.SMALL_STRONG, title);
        canvas.rectangle(Style.BOX, LEFT - 8, top + 34, 10, 118);
        canvas.rectangle(Style.BOX, RIGHT - 2, top + 34, 10, 118);
        canvas.rectangle(Style.BOX, LEFT - 8, top + 142, RIGHT - LEFT + 16, 10);
        canvas.text(RIGHT - 10, top + 134, Anchor.END, Lettering.SMALL, "metal body");
        canvas.path(Style.MINUS, new Outline().move(MINUS, top + 60).line(70, top + 84).line(70, top + 142));
        canvas.rectangle(Style.BOX, 100, top + 66, 120, 46);
        canvas.rectangle(Style.SOLID, MINUS - 8, top + 54, 16, 12);
        canvas.rectangle(Style.SOLID, PLUS - 8, top + 54, 16, 12);
        canvas.text(MINUS, top + 94, Anchor.MIDDLE, Lettering.STRONG, "−");
        canvas.text(PLUS, top + 94, Anchor.MIDDLE, Lettering.STRONG, "+");
    }

    /** A bar with a ring at the post. */
    private static void spanner(Canvas canvas, double post, double end, double y) {
        canvas.rectangle(Style.SYMBOL, Math.min(post, end), y - 5, Math.abs(end - post), 10);
        canvas.circle(Style.SYMBOL, post, y, 11).circle(Style.SYMBOL, post, y, 5);
    }

    private static void loop(Canvas canvas, double top) {
        canvas.path(Style.WARN, new Outline().move(PLUS + 18, top + 32).line(RIGHT - 20, top + 32));
        canvas.arrowHead(Style.SOLID, RIGHT - 12, top + 32, 1, 0);
        canvas.path(Style.WARN, new Outline().move(RIGHT + 16, top + 52).line(RIGHT + 16, top + 134));
        canvas.arrowHead(Style.SOLID, RIGHT + 16, top + 142, 0, 1);
        canvas.path(Style.WARN, new Outline().move(RIGHT - 30, top + 164).line(90, top + 164));
        canvas.arrowHead(Style.SOLID, 84, top + 164, -1, 0);
        canvas.path(Style.WARN, new Outline().move(54, top + 136).line(54, top + 84).line(80, top + 66));
        canvas.arrowHead(Style.SOLID, 86, top + 62, 0.83, -0.55);
    }
}
