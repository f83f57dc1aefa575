package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/** One closed circuit: the battery on the left, what the current passes on its way out along the top, the load on the right, the return below. */
public final class Loop {
    private static final double LEFT = 38;
    private static final double HEIGHT = 140;
    private static final double LABEL_ROOM = 64;

    private final List<Component> out = new ArrayList<>();
    private final List<Component> back = new ArrayList<>();
    private final Component load;
    private Component meter;

    public Loop(Symbol load, String label) {
        this.load = new Component(load, label);
    }

    /** Adds a part to the conductor from the positive terminal, in the order the current meets them. */
    public Loop out(Symbol symbol, String label) {
        out.add(new Component(symbol, label));
        return this;
    }

    /** Adds a part to the return conductor, in the order the current meets them. */
    public Loop back(Symbol symbol, String label) {
        back.add(new Component(symbol, label));
        return this;
    }

    /** Joins a meter to both ends of the load. */
    public Loop across(Symbol symbol, String label) {
        meter = new Component(symbol, label);
        return this;
    }

    public Picture picture(String title, String description) {
        double right = Picture.WIDTH - load.symbol().breadth() - 12 - Schematic.LETTERING.widest(Wrap.lines(load.label(), Schematic.LETTERING, LABEL_ROOM));
        Row outward = new Row(out, LEFT, right);
        Row returning = new Row(back, right, LEFT);
        double top = 30 + outward.labelHeight();
        double bottom = top + HEIGHT;
        double middle = (top + bottom) / 2;
        Canvas canvas = new Canvas();
        Schematic drawn = new Schematic(canvas);
        drawn.conductor(Style.PLUS, LEFT, middle - 12, LEFT, top, right, top, right, middle);
        drawn.conductor(Style.MINUS, right, middle, right, bottom, LEFT, bottom, LEFT, middle + 12);
        drawn.symbol(Symbol.BATTERY, LEFT, middle, Heading.NORTH, Side.RIGHT, "battery", LABEL_ROOM);
        drawn.sign(true, LEFT - 20, middle - 24).sign(false, LEFT - 20, middle + 36);
        if (meter != null) {
            meter(drawn, right, top, bottom);
        }
        drawn.symbol(load.symbol(), right, middle, Heading.SOUTH, Side.RIGHT, load.label(), LABEL_ROOM);
        outward.draw(drawn, top, Side.ABOVE);
        returning.draw(drawn, bottom, Side.BELOW);
        double height = bottom + (back.isEmpty() ? 12 : 30 + returning.labelHeight());
        return new Picture(title, description, canvas, Picture.WIDTH, height);
    }

    private void meter(Schematic drawn, double right, double top, double bottom) {
        double middle = (top + bottom) / 2;
        double x = right - 62;
        double upper = middle - 36;
        double lower = middle + 36;
        drawn.conductor(Style.INK, right, upper, x, upper, x, lower, right, lower);
        drawn.junction(right, upper).junction(right, lower);
        drawn.symbol(meter.symbol(), x, middle, Heading.SOUTH, Side.LEFT, meter.label(), LABEL_ROOM + 10);
    }
}
