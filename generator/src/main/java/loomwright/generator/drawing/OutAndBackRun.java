package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Heading;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.picture.Symbol;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** A run from the battery box to the bench: one route, two conductors, half the drop on each. */
final class OutAndBackRun implements Drawing {
    private static final double OUT = 62;
    private static final double BACK = 162;
    private static final double MIDDLE = (OUT + BACK) / 2;
    private static final double BATTERY = 26;
    private static final double LEFT_WALL = 106;
    private static final double RIGHT_WALL = 228;
    private static final double LOAD = 268;

    @Override
    public String name() {
        return "out-and-back-run";
    }

    @Override
    public List<String> takes() {
        return List.of("route-length");
    }

    @Override
    public Picture draw(Given given) {
        given.number("route-length", Units.METRE);
        Quantity circuit = circuitLength(given);
        Canvas canvas = new Canvas();
        canvas.rectangle(Style.INK, 4, 28, LEFT_WALL - 4, 156);
        canvas.rectangle(Style.INK, RIGHT_WALL, 28, Picture.WIDTH - 4 - RIGHT_WALL, 156);
        canvas.text(55, 20, Anchor.MIDDLE, Lettering.SMALL_STRONG, "battery box");
        canvas.text(272, 20, Anchor.MIDDLE, Lettering.SMALL_STRONG, "bench");
        run(new Schematic(canvas));
        canvas.text(272, 203, Anchor.MIDDLE, Lettering.SMALL, "accessory");
        canvas.text(272, 220, Anchor.MIDDLE, Lettering.SMALL, "outlet");
        route(canvas, given.label("route-length"));
        canvas.text(4, 248, Anchor.START, Lettering.SMALL, "circuit length = 2 × route =\u00a0" + circuit.text());
        return new Picture(
                "A run out and back",
                "The battery box on the left with its fuse-link, the bench on the right with an accessory outlet. A positive conductor runs out"
                        + " along the top and a negative conductor runs back below. Between them the route is marked, " + given.text("route-length")
                        + ". Half the drop is marked on each conductor. The circuit length is " + circuit.text() + ".",
                canvas,
                Picture.WIDTH,
                258);
    }

    /** Any current and size will do: the length does not depend on them. */
    private static Quantity circuitLength(Given given) {
        return Computed.by("voltage-drop")
                .with("current", "1 A")
                .with("route-length", given.text("route-length"))
                .with("length-counts", "one-way")
                .with("conductor", "copper-by-area")
                .with("size", "2.5 mm²")
                .result("circuit-length", Units.METRE);
    }

    private static void run(Schematic drawn) {
        double half = (LEFT_WALL + RIGHT_WALL) / 2;
        drawn.conductor(Style.PLUS, BATTERY, MIDDLE - 12, BATTERY, OUT, LOAD, OUT, LOAD, MIDDLE);
        drawn.conductor(Style.MINUS, LOAD, MIDDLE, LOAD, BACK, BATTERY, BACK, BATTERY, MIDDLE + 12);
        drawn.symbol(Symbol.BATTERY, BATTERY, MIDDLE, Heading.NORTH);
        drawn.symbol(Symbol.FUSE_LINK, 66, OUT, Heading.EAST, Side.BELOW, "fuse-link", 70);
        drawn.symbol(Symbol.OUTLET, LOAD, MIDDLE, Heading.SOUTH);
        drawn.symbol(Symbol.RESISTOR, half, OUT, Heading.EAST, Side.ABOVE, "half the drop", 120);
        drawn.symbol(Symbol.RESISTOR, half, BACK, Heading.WEST, Side.BELOW, "half the drop", 120);
        drawn.current(half + 38, OUT, Heading.EAST).current(half - 38, BACK, Heading.WEST);
        drawn.sign(true, LEFT_WALL + 12, OUT + 22).sign(false, LEFT_WALL + 12, BACK - 12);
    }

    private static void route(Canvas canvas, String length) {
        canvas.line(Style.FAINT, LEFT_WALL + 4, MIDDLE + 8, RIGHT_WALL - 4, MIDDLE + 8);
        canvas.arrowHead(Style.SOLID, LEFT_WALL + 3, MIDDLE + 8, -1, 0);
        canvas.arrowHead(Style.SOLID, RIGHT_WALL - 3, MIDDLE + 8, 1, 0);
        canvas.text((LEFT_WALL + RIGHT_WALL) / 2, MIDDLE - 1, Anchor.MIDDLE, Lettering.SMALL, "route " + length);
    }
}
