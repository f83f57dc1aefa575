package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Style;

/** The heat of one cable in the open, and of seven tied together in a pipe. */
final class HeatLeavesACable implements Drawing {
    private static final double OPEN = 76;
    private static final double BUNDLE = 234;
    private static final double MIDDLE = 106;
    private static final double COPPER = 9;
    private static final double CABLE = 17;
    private static final double PIPE = 56;
    private static final int DIRECTIONS = 6;

    @Override
    public String name() {
        return "heat-leaves-a-cable";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Canvas canvas = new Canvas();
        canvas.text(OPEN, 20, Anchor.MIDDLE, Lettering.SMALL_STRONG, "in the open");
        canvas.text(BUNDLE, 20, Anchor.MIDDLE, Lettering.SMALL_STRONG, "tied up in a pipe");
        cable(canvas, OPEN, MIDDLE, Style.SOLID);
        canvas.circle(Style.INK, BUNDLE, MIDDLE, PIPE);
        cable(canvas, BUNDLE, MIDDLE, Style.SOLID_ACCENT);
        for (int i = 0; i < DIRECTIONS; i++) {
            double dx = Math.cos(Math.PI * (i + 0.5) / 3);
            double dy = Math.sin(Math.PI * (i + 0.5) / 3);
            arrow(canvas, OPEN, dx, dy, CABLE + 5, CABLE + 40);
            cable(canvas, BUNDLE + 2 * CABLE * dx, MIDDLE + 2 * CABLE * dy, Style.SOLID);
            arrow(canvas, BUNDLE, dx, dy, PIPE + 2, PIPE + 16);
        }
        canvas.text(OPEN, 204, Anchor.MIDDLE, Lettering.SMALL, "heat leaves");
        canvas.text(OPEN, 221, Anchor.MIDDLE, Lettering.SMALL, "all round");
        canvas.text(BUNDLE, 204, Anchor.MIDDLE, Lettering.SMALL, "the one in the middle");
        canvas.text(BUNDLE, 221, Anchor.MIDDLE, Lettering.SMALL, "has no way out");
        return new Picture(
                "How heat leaves a cable",
                "On the left one cable seen from its cut end: copper, insulation round it, and six long arrows of heat away from it. On the right"
                        + " seven such cables in a pipe: only short arrows leave the pipe, and the cable in the middle is shut in by the others.",
                canvas,
                Picture.WIDTH,
                230);
    }

    private static void cable(Canvas canvas, double x, double y, Style copper) {
        canvas.circle(Style.BOX, x, y, CABLE);
        canvas.circle(copper, x, y, COPPER);
    }

    private static void arrow(Canvas canvas, double x, double dx, double dy, double from, double to) {
        canvas.line(Style.INK, x + from * dx, MIDDLE + from * dy, x + (to - 6) * dx, MIDDLE + (to - 6) * dy);
        canvas.arrowHead(Style.SOLID, x + to * dx, MIDDLE + to * dy, dx, dy);
    }
}
