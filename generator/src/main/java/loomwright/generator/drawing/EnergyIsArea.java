package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Axis;
import loomwright.picture.Canvas;
import loomwright.picture.FigureTable;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.picture.Tick;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** Watts over the hours of a day: a lamp in the evening on top of a coil that is never off; each area is an energy. */
final class EnergyIsArea implements Drawing {
    private static final double LEFT = 34;
    private static final double RIGHT = 308;
    private static final double TOP = 34;
    private static final double BOTTOM = 220;
    private static final double LAMP_OFF = 22;

    @Override
    public String name() {
        return "energy-is-area";
    }

    @Override
    public List<String> takes() {
        return List.of("lamp-power", "lamp-hours", "coil-power");
    }

    @Override
    public Picture draw(Given given) {
        double hours = given.number("lamp-hours", Units.HOUR);
        if (hours > LAMP_OFF) {
            throw given.fault("lamp-hours", "must be at most " + (int) LAMP_OFF + " h");
        }
        double coil = given.number("coil-power", Units.WATT);
        double lamp = given.number("lamp-power", Units.WATT);
        Axis up = Axis.fromZero("Power (W)", coil + lamp).parts(3);
        Quantity lampEnergy = energy(given, "lamp-power", given.text("lamp-hours"));
        Quantity coilEnergy = energy(given, "coil-power", "24 h");
        Canvas canvas = new Canvas();
        scales(canvas, up);
        double step = up.place(coil, BOTTOM, TOP);
        double peak = up.place(coil + lamp, BOTTOM, TOP);
        canvas.rectangle(Style.BOX, LEFT, step, RIGHT - LEFT, BOTTOM - step);
        canvas.rectangle(Style.SOLID_ACCENT, across(LAMP_OFF - hours), peak, across(LAMP_OFF) - across(LAMP_OFF - hours), step - peak);
        double beside = across(LAMP_OFF - hours) - 8;
        words(canvas, beside, 84, "lamp in the evening", given.label("lamp-power"), given.label("lamp-hours"), lampEnergy);
        words(canvas, beside, 150, "coil, all day", given.label("coil-power"), "24\u00a0h", coilEnergy);
        return new Picture(
                        "Energy is an area",
                        "A graph of watts over the 24 hours of a day. A low strip along the bottom, " + given.text("coil-power")
                                + " all day, is a coil. On top of it, in the evening, stands a tall narrow block, a lamp of "
                                + given.text("lamp-power") + " for " + given.text("lamp-hours") + ". The areas are " + coilEnergy.text(3)
                                + " and " + lampEnergy.text(3) + ".",
                        canvas,
                        Picture.WIDTH,
                        BOTTOM + 44)
                .with(new FigureTable(
                        List.of("Load", "Power", "Time", "Energy"),
                        List.of(
                                List.of("lamp", given.label("lamp-power"), given.label("lamp-hours"), lampEnergy.text(3)),
                                List.of("coil", given.label("coil-power"), "24\u00a0h", coilEnergy.text(3)))));
    }

    private static Quantity energy(Given given, String power, String hours) {
        return Computed.by("day-energy")
                .with("load-1-power", given.text(power))
                .with("load-1-hours", hours)
                .result("load-1-energy", Units.WATT_HOUR);
    }

    private static double across(double hour) {
        return LEFT + (RIGHT - LEFT) * hour / 24;
    }

    private static void scales(Canvas canvas, Axis up) {
        canvas.text(0, 15, Anchor.START, Lettering.SMALL, up.title());
        for (Tick tick : up.ticks()) {
            double y = up.place(tick.value(), BOTTOM, TOP);
            canvas.line(Style.FAINT, LEFT, y, RIGHT, y);
            canvas.text(LEFT - 6, y + 5, Anchor.END, Lettering.SMALL, tick.text());
        }
        for (int hour = 0; hour <= 24; hour += 6) {
            canvas.line(Style.INK, across(hour), BOTTOM, across(hour), BOTTOM + 5);
            canvas.text(across(hour), BOTTOM + 20, Anchor.MIDDLE, Lettering.SMALL, String.valueOf(hour));
        }
        canvas.text(LEFT, BOTTOM + 38, Anchor.START, Lettering.SMALL, "Hour of the day");
        canvas.path(Style.INK, new Outline().move(LEFT, TOP).line(LEFT, BOTTOM).line(RIGHT, BOTTOM));
    }

    private static void words(Canvas canvas, double right, double y, String name, String power, String hours, Quantity energy) {
        String sum = power + "\u00a0×\u00a0" + hours + "\u00a0=\u00a0" + energy.text(3);
        double width = Math.max(Lettering.SMALL_STRONG.width(name), Lettering.SMALL.width(sum)) + 8;
        canvas.rectangle(Style.PAPER, right - width + 4, y - 15, width, 40);
        canvas.text(right, y, Anchor.END, Lettering.SMALL_STRONG, name);
        canvas.text(right, y + 19, Anchor.END, Lettering.SMALL, sum);
    }
}
