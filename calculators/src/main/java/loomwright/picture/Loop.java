package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/** One closed circuit: the source on the left, what the current passes on its way out along the top, the load on the right, the return below. */
public final class Loop {
    private record Element(Symbol symbol, String label) {}

    private static final double LEFT = 38;
    private static final double HEIGHT = 140;
    private static final double LABEL_ROOM = 64;
    private static final Lettering LETTERING = Lettering.SMALL;

    private final List<Element> out = new ArrayList<>();
    private final List<Element> back = new ArrayList<>();
    private final Element load;
    private Element meter;

    public Loop(Symbol load, String label) {
        this.load = new Element(load, label);
    }

    /** Adds a part to the conductor from the positive terminal, in the order the current meets them. */
    public Loop out(Symbol symbol, String label) {
        out.add(new Element(symbol, label));
        return this;
    }

    /** Adds a part to the return conductor, in the order the current meets them. */
    public Loop back(Symbol symbol, String label) {
        back.add(new Element(symbol, label));
        return this;
    }

    /** Joins a meter to both ends of the load. */
    public Loop across(Symbol symbol, String label) {
        meter = new Element(symbol, label);
        return this;
    }

    public Picture picture(String title, String description) {
        double right = Picture.WIDTH - 26 - widest(Wrap.lines(load.label, LETTERING, LABEL_ROOM));
        double top = 30 + labelHeight(out, right);
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
        drawn.symbol(load.symbol, right, middle, Heading.SOUTH, Side.RIGHT, load.label, LABEL_ROOM);
        row(drawn, out, LEFT, right, top, Heading.EAST, Side.ABOVE);
        row(drawn, back, right, LEFT, bottom, Heading.WEST, Side.BELOW);
        double height = bottom + (back.isEmpty() ? 12 : 24 + labelHeight(back, right));
        return new Picture(title, description, canvas, Picture.WIDTH, height);
    }

    private void meter(Schematic drawn, double right, double top, double bottom) {
        double middle = (top + bottom) / 2;
        double x = right - 62;
        double upper = middle - 36;
        double lower = middle + 36;
        drawn.conductor(Style.INK, right, upper, x, upper, x, lower, right, lower);
        drawn.junction(right, upper).junction(right, lower);
        drawn.symbol(meter.symbol, x, middle, Heading.SOUTH, Side.LEFT, meter.label, LABEL_ROOM + 10);
    }

    /** Parts evenly spread along a conductor, with an arrow after the first. */
    private static void row(Schematic drawn, List<Element> parts, double from, double to, double y, Heading heading, Side side) {
        double pitch = (to - from) / Math.max(1, parts.size());
        for (int i = 0; i < parts.size(); i++) {
            Element part = parts.get(i);
            drawn.symbol(part.symbol, from + (i + 0.5) * pitch, y, heading, side, part.label, Math.abs(pitch) - 8);
        }
        drawn.current(parts.isEmpty() ? (from + to) / 2 : from + pitch, y, heading);
    }

    private static double labelHeight(List<Element> parts, double right) {
        int most = 0;
        for (Element part : parts) {
            most = Math.max(most, Wrap.lines(part.label, LETTERING, (right - LEFT) / parts.size() - 8).size());
        }
        return most * LETTERING.lineHeight();
    }

    private static double widest(List<String> lines) {
        double widest = 0;
        for (String line : lines) {
            widest = Math.max(widest, LETTERING.width(line));
        }
        return widest;
    }
}
