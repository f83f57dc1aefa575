package loomwright.drawing;

import java.util.List;
import loomwright.picture.Canvas;
import loomwright.picture.Component;
import loomwright.picture.Heading;
import loomwright.picture.Picture;
import loomwright.picture.Schematic;
import loomwright.picture.Side;
import loomwright.picture.Style;
import loomwright.picture.Symbol;

/** The symbols a 12 V circuit needs, each on a short conductor with its name. */
final class CircuitSymbols implements Drawing {
    private static final List<Component> SHOWN = List.of(
            new Component(Symbol.BATTERY, "battery; long plate is plus"),
            new Component(Symbol.FUSE_LINK, "fuse-link"),
            new Component(Symbol.BREAKER, "breaker"),
            new Component(Symbol.SWITCH_OPEN, "switch or relay contact"),
            new Component(Symbol.RELAY_COIL, "relay coil"),
            new Component(Symbol.OUTLET, "outlet"),
            new Component(Symbol.CONVERTER, "converter"),
            new Component(Symbol.LAMP, "lamp"),
            new Component(Symbol.MOTOR, "motor"),
            new Component(Symbol.RESISTOR, "resistor"),
            new Component(Symbol.DIODE, "diode"));
    private static final double ROW = 52;
    private static final double COLUMN = 162;
    private static final double HALF = 26;
    private static final int ROWS = 7;

    @Override
    public String name() {
        return "circuit-symbols";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Canvas canvas = new Canvas();
        Schematic drawn = new Schematic(canvas);
        for (int i = 0; i < SHOWN.size(); i++) {
            double x = 30 + COLUMN * (i / ROWS);
            double y = 30 + ROW * (i % ROWS);
            drawn.conductor(Style.INK, x - HALF, y, x + HALF, y);
            drawn.symbol(SHOWN.get(i).symbol(), x, y, Heading.EAST);
            name(drawn, x, y, SHOWN.get(i));
        }
        crossings(drawn);
        return new Picture(
                "Symbols of a 12 V circuit",
                "Thirteen symbols with their names. Two or three differ little: a fuse-link is a narrow box with the conductor drawn through it, a"
                        + " resistor the same box without the line. A breaker is an open switch with a cross at its fixed end. Conductors that"
                        + " are joined have a dot; conductors that only cross have none.",
                canvas,
                Picture.WIDTH,
                30 + ROW * ROWS);
    }

    private static void crossings(Schematic drawn) {
        double x = 30 + COLUMN;
        double joined = 30 + ROW * 4;
        drawn.conductor(Style.INK, x - HALF, joined, x + HALF, joined).conductor(Style.INK, x, joined - 18, x, joined + 18);
        drawn.junction(x, joined);
        name(drawn, x, joined, new Component(Symbol.DIODE, "joined"));
        double apart = 30 + ROW * 5;
        drawn.conductor(Style.INK, x - HALF, apart, x + HALF, apart).conductor(Style.INK, x, apart - 18, x, apart + 18);
        name(drawn, x, apart, new Component(Symbol.DIODE, "crossing, not joined"));
    }

    private static void name(Schematic drawn, double x, double y, Component component) {
        drawn.words(x + HALF, y, Side.RIGHT, component.label(), 98);
    }
}
