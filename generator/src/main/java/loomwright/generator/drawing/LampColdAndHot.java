package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Axis;
import loomwright.picture.Canvas;
import loomwright.picture.Heading;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.picture.Symbol;
import loomwright.picture.Tick;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** Current of a lamp in the first instant and when it glows, as two upright bars on one scale. */
final class LampColdAndHot implements Drawing {
    private static final double LEFT = 34;
    private static final double TOP = 34;
    private static final double BOTTOM = 220;
    private static final double COLD = 106;
    private static final double HOT = 236;
    private static final double HALF_BAR = 26;

    @Override
    public String name() {
        return "lamp-cold-and-hot";
    }

    @Override
    public List<String> takes() {
        return List.of("voltage", "cold-resistance", "hot-current");
    }

    @Override
    public Picture draw(Given given) {
        given.number("cold-resistance", Units.OHM);
        given.number("voltage", Units.VOLT);
        Quantity cold = Computed.by("ohm-and-power")
                .with("voltage", given.text("voltage"))
                .with("resistance", given.text("cold-resistance"))
                .result("current", Units.AMPERE);
        double hot = given.number("hot-current", Units.AMPERE);
        Axis axis = Axis.fromZero("Current (A)", Math.max(cold.value(), hot));
        Canvas canvas = new Canvas();
        scale(canvas, axis);
        bar(canvas, axis, COLD, cold.value(), cold.text(3), Style.SOLID_ACCENT);
        bar(canvas, axis, HOT, hot, given.label("hot-current"), Style.SOLID);
        Symbol.LAMP.draw(canvas, COLD, BOTTOM + 34, Heading.EAST);
        Symbol.LAMP_LIT.draw(canvas, HOT, BOTTOM + 34, Heading.EAST);
        canvas.text(COLD, BOTTOM + 80, Anchor.MIDDLE, Lettering.SMALL, "cold, first instant");
        canvas.text(HOT, BOTTOM + 80, Anchor.MIDDLE, Lettering.SMALL, "glowing");
        return new Picture(
                "Current of a lamp, cold and glowing",
                "Two upright bars on one scale of amperes. The tall bar is the current of a lamp in the instant it is switched on, cold: "
                        + cold.text(3) + ". The short bar is its current when it glows: " + given.text("hot-current") + ".",
                canvas,
                Picture.WIDTH,
                BOTTOM + 90);
    }

    private static void scale(Canvas canvas, Axis axis) {
        canvas.text(0, 15, Anchor.START, Lettering.SMALL, axis.title());
        for (Tick tick : axis.ticks()) {
            double y = axis.place(tick.value(), BOTTOM, TOP);
            canvas.line(Style.FAINT, LEFT, y, Picture.WIDTH - 10, y);
            canvas.text(LEFT - 6, y + 5, Anchor.END, Lettering.SMALL, tick.text());
        }
        canvas.line(Style.INK, LEFT, TOP, LEFT, BOTTOM);
        canvas.line(Style.INK, LEFT, BOTTOM, Picture.WIDTH - 10, BOTTOM);
    }

    private static void bar(Canvas canvas, Axis axis, double x, double amperes, String figure, Style style) {
        double y = axis.place(amperes, BOTTOM, TOP);
        canvas.rectangle(style, x - HALF_BAR, y, 2 * HALF_BAR, BOTTOM - y);
        double halfFigure = Lettering.STRONG.width(figure) / 2;
        canvas.rectangle(Style.PAPER, x - halfFigure, y - 22, 2 * halfFigure, 19);
        canvas.text(x, y - 7, Anchor.MIDDLE, Lettering.STRONG, figure);
    }
}
