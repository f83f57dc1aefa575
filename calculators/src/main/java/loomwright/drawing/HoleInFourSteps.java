package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Style;

/** A panel from the edge in four steps: pilot hole, full hole with its burr, burr taken off, grommet with a cable. */
final class HoleInFourSteps implements Drawing {
    private static final double APART = 62;
    private static final double FIRST = 40;
    private static final double MIDDLE = 86;
    private static final double HALF = 78;
    private static final double THICK = 12;

    @Override
    public String name() {
        return "hole-in-four-steps";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Canvas canvas = new Canvas();
        step(canvas, 0, 4, "1 pilot hole:", "look and feel");
        step(canvas, 1, 30, "2 full hole,", "with a burr");
        burr(canvas, FIRST + APART, MIDDLE - 30, -1);
        burr(canvas, FIRST + APART, MIDDLE + 30, 1);
        step(canvas, 2, 30, "3 deburred", "both sides");
        step(canvas, 3, 30, "4 grommet,", "then the cable");
        grommet(canvas, FIRST + 3 * APART);
        canvas.text(4, 4 * APART + 22, Anchor.START, Lettering.SMALL, "The panel is cut through. Not to scale.");
        return new Picture(
                "A hole in four steps",
                "A panel cut through, four times below each other. First a narrow pilot hole. Then the full hole, with a sharp burr at its lower edge. Then"
                        + " the same hole without the burr. Last a soft grommet lines the hole and a cable goes through it.",
                canvas,
                Picture.WIDTH,
                4 * APART + 32);
    }

    private static void step(Canvas canvas, int number, double halfHole, String first, String second) {
        double y = FIRST + number * APART;
        canvas.rectangle(Style.BOX, MIDDLE - HALF, y - THICK / 2, HALF - halfHole, THICK);
        canvas.rectangle(Style.BOX, MIDDLE + halfHole, y - THICK / 2, HALF - halfHole, THICK);
        canvas.text(182, y - 4, Anchor.START, Lettering.SMALL, List.of(first, second));
    }

    private static void burr(Canvas canvas, double y, double x, int side) {
        canvas.path(
                Style.SOLID_ACCENT,
                new Outline().move(x, y + THICK / 2 - 1).line(x, y + THICK / 2 + 9).line(x + side * 9, y + THICK / 2 - 1).close());
    }

    private static void grommet(Canvas canvas, double y) {
        for (int side = -1; side <= 1; side += 2) {
            double rim = MIDDLE + side * 30;
            double in = rim - side * 10;
            double out = rim + side * 9;
            double high = THICK / 2;
            canvas.path(
                    Style.SOLID_ACCENT,
                    new Outline().move(out, y - high - 6).line(in, y - high - 6).line(in, y + high + 6).line(out, y + high + 6)
                            .line(out, y + high).line(rim, y + high).line(rim, y - high).line(out, y - high).close());
        }
        canvas.rectangle(Style.SYMBOL, MIDDLE - 12, y - 22, 24, 44);
    }
}
