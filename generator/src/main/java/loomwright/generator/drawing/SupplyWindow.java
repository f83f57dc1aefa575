package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Axis;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.picture.Tick;
import loomwright.quantity.Units;

/** The voltages between which a 12 V system lives, on a scale. */
final class SupplyWindow implements Drawing {
    private static final double LEFT = 20;
    private static final double RIGHT = 300;
    private static final double TOP = 52;
    private static final double SCALE = 70;

    @Override
    public String name() {
        return "supply-window";
    }

    @Override
    public List<String> takes() {
        return List.of("lowest", "nominal", "battery", "highest");
    }

    @Override
    public Picture draw(Given given) {
        given.rising(Units.VOLT, "lowest", "nominal", "battery", "highest");
        double lowest = given.number("lowest", Units.VOLT);
        double highest = given.number("highest", Units.VOLT);
        Axis axis = Axis.linear("Supply voltage (V)", Math.floor(lowest - 0.5), Math.ceil(highest + 0.1));
        Canvas canvas = new Canvas();
        window(canvas, axis, lowest, highest);
        scale(canvas, axis);
        mark(canvas, axis, given, "nominal", "the name", Anchor.END);
        mark(canvas, axis, given, "battery", "trailer battery", Anchor.START);
        end(canvas, axis, lowest, given.text("lowest"), "empty");
        end(canvas, axis, highest, given.text("highest"), "charging");
        canvas.text((LEFT + RIGHT) / 2, 164, Anchor.MIDDLE, Lettering.SMALL, axis.title());
        return new Picture(
                "The window of supply voltage",
                "A scale of supply voltage. A shaded bar runs from " + given.text("lowest") + ", empty, to " + given.text("highest")
                        + ", charging. Inside it are marks at " + given.text("nominal") + ", the nominal voltage, and "
                        + given.text("battery") + ", the battery.",
                canvas,
                Picture.WIDTH,
                174);
    }

    private static void window(Canvas canvas, Axis axis, double lowest, double highest) {
        double from = axis.place(lowest, LEFT, RIGHT);
        double to = axis.place(highest, LEFT, RIGHT);
        canvas.rectangle(Style.HATCH, LEFT, TOP, from - LEFT, SCALE - TOP);
        canvas.rectangle(Style.HATCH, to, TOP, RIGHT - to, SCALE - TOP);
        canvas.rectangle(Style.SOLID_ACCENT, from, TOP, to - from, SCALE - TOP);
    }

    private static void scale(Canvas canvas, Axis axis) {
        canvas.line(Style.INK, LEFT, SCALE, RIGHT, SCALE);
        for (Tick tick : axis.parts(12).ticks()) {
            double x = axis.place(tick.value(), LEFT, RIGHT);
            boolean whole = tick.value() == Math.floor(tick.value());
            canvas.line(Style.INK, x, SCALE, x, SCALE + (whole ? 9 : 5));
            if (whole) {
                canvas.text(x, SCALE + 25, Anchor.MIDDLE, Lettering.SMALL, tick.text().substring(0, tick.text().indexOf('.')));
            }
        }
    }

    private static void mark(Canvas canvas, Axis axis, Given given, String key, String word, Anchor anchor) {
        double x = axis.place(given.number(key, Units.VOLT), LEFT, RIGHT);
        canvas.rectangle(Style.PAPER, x - 2, TOP, 4, SCALE - TOP);
        canvas.line(Style.INK, x, 4, x, TOP);
        double beside = anchor == Anchor.START ? x + 7 : x - 7;
        canvas.text(beside, 16, anchor, Lettering.SMALL_STRONG, given.text(key));
        canvas.text(beside, 33, anchor, Lettering.SMALL, word);
    }

    private static void end(Canvas canvas, Axis axis, double value, String figure, String word) {
        double x = axis.place(value, LEFT, RIGHT);
        canvas.line(Style.INK, x, SCALE, x, 106);
        canvas.text(x, 121, Anchor.MIDDLE, Lettering.SMALL_STRONG, figure);
        canvas.text(x, 138, Anchor.MIDDLE, Lettering.SMALL, word);
    }
}
