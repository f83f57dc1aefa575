package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Dash;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The climb of the temperature from the air over the heat sink to the junction of a solid-state switch, below its limit. */
final class HeatStaircase implements Drawing {
    private static final double TOP = 30;
    private static final double FLOOR = 210;
    private static final double[] EDGES = {6, 100, 208, 314};

    @Override
    public String name() {
        return "heat-staircase";
    }

    @Override
    public List<String> takes() {
        return List.of("current", "voltage-drop", "junction-to-case", "case-to-sink", "sink-to-air", "ambient", "junction-limit");
    }

    @Override
    public Picture draw(Given given) {
        given.number("current", Units.AMPERE);
        given.number("voltage-drop", Units.VOLT);
        for (String part : List.of("junction-to-case", "case-to-sink", "sink-to-air")) {
            given.number(part, Units.KELVIN_PER_WATT);
        }
        given.rising(Units.CELSIUS, "ambient", "junction-limit");
        Quantity sink = computed(given).result("sink", Units.CELSIUS);
        Quantity junction = computed(given).result("junction", Units.CELSIUS);
        if (junction.value() > given.quantity("junction-limit", Units.CELSIUS).value()) {
            throw given.fault("junction-limit", "is below the junction, " + junction.text(3) + "; the drawing is of one that keeps within it");
        }
        Canvas canvas = new Canvas();
        canvas.path(Style.WARN, Dash.LONG, new Outline().move(EDGES[0], TOP).line(EDGES[3], TOP));
        canvas.text(EDGES[0], TOP - 8, Anchor.START, Lettering.SMALL, "limit of the junction " + given.label("junction-limit"));
        step(canvas, given, 0, given.quantity("ambient", Units.CELSIUS), "air");
        step(canvas, given, 1, sink, "heat sink");
        step(canvas, given, 2, junction, "junction");
        canvas.line(Style.INK, EDGES[0], FLOOR, EDGES[3], FLOOR);
        return new Picture(
                "The climb from the air to the junction",
                "Three steps that rise from left to right: the air at " + given.text("ambient") + ", the heat sink at " + sink.text(3)
                        + " and the junction inside the switch at " + junction.text(3) + ". A dashed line above all three marks the limit, "
                        + given.text("junction-limit") + ".",
                canvas,
                Picture.WIDTH,
                FLOOR + 26);
    }

    private static void step(Canvas canvas, Given given, int place, Quantity warmth, String what) {
        double from = given.quantity("ambient", Units.CELSIUS).value();
        double to = given.quantity("junction-limit", Units.CELSIUS).value();
        double lowest = FLOOR - 40;
        double y = lowest - (warmth.value() - from) / (to - from) * (lowest - TOP);
        double left = EDGES[place];
        double width = EDGES[place + 1] - left;
        canvas.rectangle(Style.BOX, left, y, width, FLOOR - y);
        canvas.text(left + width / 2, y + 22, Anchor.MIDDLE, Lettering.SMALL_STRONG, warmth.text(3));
        canvas.text(left + width / 2, FLOOR + 18, Anchor.MIDDLE, Lettering.SMALL, what);
    }

    private static Computed computed(Given given) {
        Computed by = Computed.by("junction-temperature");
        for (String key : List.of("current", "voltage-drop", "junction-to-case", "case-to-sink", "sink-to-air", "ambient", "junction-limit")) {
            by.with(key, given.text(key));
        }
        return by;
    }
}
