package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Style;

/** A crimp sawn through: pressed too little, right, and too much. */
final class CrimpAcrossTheBarrel implements Drawing {
    private static final double MIDDLE = 66;
    private static final double LEFT = 54;
    private static final double CENTRE = 160;
    private static final double RIGHT = 266;
    /** How far a control point lies along the half axis for a quarter of an ellipse. */
    private static final double QUARTER = 0.5523;

    @Override
    public String name() {
        return "crimp-across-the-barrel";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Canvas canvas = new Canvas();
        tooLittle(canvas);
        right(canvas);
        tooMuch(canvas);
        label(canvas, LEFT, "too little", "air between", "the strands");
        label(canvas, CENTRE, "right", "one solid", "mass, no air");
        label(canvas, RIGHT, "too much", "crushed flat,", "barrel split");
        return new Picture(
                "A crimp sawn through, three times",
                "On the left a round barrel with seven round strands and air between them: pressed too little. In the middle a barrel pressed so that"
                        + " the strands have turned into many-sided pieces without air between them: right. On the right a flat barrel with crushed"
                        + " strands and a split in its wall: pressed too much.",
                canvas,
                Picture.WIDTH,
                190);
    }

    private static void tooLittle(Canvas canvas) {
        canvas.circle(Style.SOLID_ACCENT, LEFT, MIDDLE, 40).circle(Style.SYMBOL, LEFT, MIDDLE, 32);
        canvas.circle(Style.BOX, LEFT, MIDDLE, 8.5);
        for (int i = 0; i < 6; i++) {
            canvas.circle(Style.BOX, LEFT + 21 * Math.cos(i * Math.PI / 3), MIDDLE + 21 * Math.sin(i * Math.PI / 3), 8.5);
        }
    }

    private static void right(Canvas canvas) {
        canvas.path(Style.SOLID_ACCENT, ellipse(CENTRE, MIDDLE, 42, 29)).path(Style.BOX, ellipse(CENTRE, MIDDLE, 33, 20));
        cells(canvas, CENTRE, 11, 7, 33, 20);
    }

    private static void tooMuch(Canvas canvas) {
        canvas.path(Style.SOLID_ACCENT, ellipse(RIGHT, MIDDLE, 50, 16)).path(Style.BOX, ellipse(RIGHT, MIDDLE, 43, 9));
        cells(canvas, RIGHT, 15, 3, 43, 9);
        canvas.path(
                Style.PAPER,
                new Outline().move(RIGHT + 14, MIDDLE - 18).line(RIGHT + 26, MIDDLE - 18).line(RIGHT + 20, MIDDLE - 5).close());
    }

    /** A six-sided piece in the middle, and a line from each of its corners to the wall. */
    private static void cells(Canvas canvas, double x, double wide, double high, double wallWide, double wallHigh) {
        Outline middle = new Outline();
        for (int i = 0; i < 6; i++) {
            double along = Math.cos(i * Math.PI / 3);
            double up = Math.sin(i * Math.PI / 3);
            double cornerX = x + wide * along;
            double cornerY = MIDDLE + high * up;
            middle = i == 0 ? middle.move(cornerX, cornerY) : middle.line(cornerX, cornerY);
            canvas.line(Style.INK, cornerX, cornerY, x + wallWide * along, MIDDLE + wallHigh * up);
        }
        canvas.path(Style.INK, middle.close());
    }

    private static Outline ellipse(double x, double y, double wide, double high) {
        double w = wide * QUARTER;
        double h = high * QUARTER;
        return new Outline().move(x - wide, y)
                .curve(x - wide, y - h, x - w, y - high, x, y - high)
                .curve(x + w, y - high, x + wide, y - h, x + wide, y)
                .curve(x + wide, y + h, x + w, y + high, x, y + high)
                .curve(x - w, y + high, x - wide, y + h, x - wide, y)
                .close();
    }

    private static void label(Canvas canvas, double x, String head, String first, String second) {
        canvas.text(x, 136, Anchor.MIDDLE, Lettering.SMALL_STRONG, head);
        canvas.text(x, 156, Anchor.MIDDLE, Lettering.SMALL, List.of(first, second));
    }
}
