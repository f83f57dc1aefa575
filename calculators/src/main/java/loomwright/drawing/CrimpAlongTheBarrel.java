package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Style;

/** A crimped terminal cut open along its length: one made right, and three that are not. */
final class CrimpAlongTheBarrel implements Drawing {
    private static final double BARREL_FROM = 86;
    private static final double BARREL_TO = 146;
    private static final double WALL = 5;
    private static final double BORE = 11;
    private static final double PRESSED = 4;
    private static final double RIGHT = 86;
    private static final double FIRST_WRONG = 186;
    private static final double APART = 68;

    @Override
    public String name() {
        return "crimp-along-the-barrel";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Canvas canvas = new Canvas();
        canvas.text(0, 14, Anchor.START, Lettering.SMALL_STRONG, "Right");
        terminal(canvas, RIGHT, PRESSED, 78, 152);
        pointer(canvas, 38, RIGHT - 46, RIGHT - 14, "insulation");
        canvas.line(Style.FAINT, 117, RIGHT - 41, 117, RIGHT - 13);
        canvas.text(86, RIGHT - 46, Anchor.START, Lettering.SMALL, "barrel, pressed");
        pointer(canvas, 82, RIGHT + 44, RIGHT + 6, "small gap");
        canvas.line(Style.FAINT, 151, RIGHT - 2, 178, RIGHT - 24);
        canvas.text(181, RIGHT - 22, Anchor.START, Lettering.SMALL, List.of("strands just", "look out"));
        canvas.text(222, RIGHT + 36, Anchor.MIDDLE, Lettering.SMALL, "tongue with ring");
        canvas.text(0, FIRST_WRONG - 34, Anchor.START, Lettering.SMALL_STRONG, "Wrong");
        terminal(canvas, FIRST_WRONG, PRESSED, 112, 152);
        words(canvas, FIRST_WRONG, "insulation", "in the barrel");
        terminal(canvas, FIRST_WRONG + APART, PRESSED, 52, 112);
        words(canvas, FIRST_WRONG + APART, "too short:", "bare neck");
        terminal(canvas, FIRST_WRONG + 2 * APART, BORE, 78, 152);
        words(canvas, FIRST_WRONG + 2 * APART, "not pressed:", "strands loose");
        return new Picture(
                "Crimps cut open along the barrel",
                "At the top a good crimp: the insulation ends a small gap before the barrel, the barrel is pressed in on the strands, and the strands"
                        + " just look out at the far end. Below it three wrong ones: insulation inside the barrel; strands too short with a long bare"
                        + " neck; a barrel that is not pressed, with room round the strands.",
                canvas,
                Picture.WIDTH,
                FIRST_WRONG + 2 * APART + 30);
    }

    /** A terminal on a cable along {@code y}; {@code half} is half the height left for the strands where the tool pressed. */
    private static void terminal(Canvas canvas, double y, double half, double insulationEnd, double strandEnd) {
        for (int i = -2; i <= 2; i++) {
            double near = y + i * 3.6;
            double squeezed = y + i * Math.min(3.6, half * 0.45);
            Outline strand = new Outline().move(Math.min(insulationEnd, BARREL_FROM), near);
            if (strandEnd < BARREL_TO) {
                strand.line(100, near).line(strandEnd, squeezed);
            } else {
                strand.line(100, near).line(106, squeezed).line(128, squeezed).line(134, near).line(strandEnd, near);
            }
            canvas.path(Style.INK, strand);
        }
        canvas.rectangle(Style.BOX, 2, y - 10, insulationEnd - 2, 20);
        wall(canvas, y, -1, half);
        wall(canvas, y, 1, half);
        canvas.rectangle(Style.SOLID_ACCENT, BARREL_TO, y + BORE, 62, WALL);
    }

    private static void wall(Canvas canvas, double y, int side, double half) {
        double out = y + side * (BORE + WALL);
        double in = y + side * BORE;
        double pressedIn = y + side * Math.min(BORE, half + 1);
        double pressedOut = pressedIn + side * WALL;
        canvas.path(
                Style.SOLID_ACCENT,
                new Outline().move(BARREL_FROM, out).line(100, out).line(106, pressedOut).line(128, pressedOut).line(134, out)
                        .line(BARREL_TO, out).line(BARREL_TO, in).line(134, in).line(128, pressedIn).line(106, pressedIn).line(100, in)
                        .line(BARREL_FROM, in).close());
    }

    private static void pointer(Canvas canvas, double x, double from, double to, String word) {
        canvas.line(Style.FAINT, x, from < to ? from + 5 : from - 13, x, to);
        canvas.text(x, from, Anchor.MIDDLE, Lettering.SMALL, word);
    }

    private static void words(Canvas canvas, double y, String first, String second) {
        canvas.text(216, y - 3, Anchor.START, Lettering.SMALL, List.of(first, second));
    }
}
