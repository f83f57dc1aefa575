package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/** Level bars from one zero line, each with its name above it and its figure at its end; a bar may be made of several parts. */
public final class Bars {
    /**
     * A piece of a bar.
     *
     * @param name what it stands for, in the key below the bars; empty if the name of the bar says it
     * @param value how long it is, on the axis
     * @param style how it is filled
     */
    public record Part(String name, double value, Style style) {}

    /**
     * A bar.
     *
     * @param name what it stands for
     * @param figure its value with the unit
     * @param parts its pieces, from the zero line on
     */
    public record Bar(String name, String figure, List<Part> parts) {}

    private static final Lettering LETTERING = Lettering.SMALL;
    private static final double LEFT = 12;
    private static final double THICKNESS = 20;
    private static final double PITCH = 50;
    private static final double NAME_BASE = 16;
    private static final double BAR_TOP = 23;
    private static final double KEY_LINE = 22;

    private final String kind;
    private final Axis axis;
    private final List<Bar> bars;
    private final Canvas canvas = new Canvas();

    /**
     * Bars along an axis.
     *
     * @param kind what the bars are, to head the table of their figures
     * @param axis begins at zero: bars that did not would show a false ratio
     * @param bars from the top down
     */
    public Bars(String kind, Axis axis, List<Bar> bars) {
        if (axis.from() != 0) {
            throw new IllegalArgumentException("bars must begin at zero");
        }
        this.kind = kind;
        this.axis = axis;
        this.bars = bars;
    }

    public Picture picture(String title, String description) {
        double end = Picture.WIDTH - 8 - widestFigure();
        double bottom = bars.size() * PITCH + 6;
        for (Tick tick : axis.ticks()) {
            double x = axis.place(tick.value(), LEFT, end);
            canvas.line(Style.INK, x, bottom, x, bottom + 5);
            canvas.text(x, bottom + 20, Anchor.MIDDLE, LETTERING, tick.text());
        }
        for (int i = 0; i < bars.size(); i++) {
            bar(bars.get(i), i * PITCH, end);
        }
        canvas.path(Style.INK, new Outline().move(LEFT, BAR_TOP - 3).line(LEFT, bottom).line(end, bottom));
        canvas.text(LEFT, bottom + 39, Anchor.START, LETTERING, axis.title());
        double height = key(bottom + 47);
        return new Picture(title, description, canvas, Picture.WIDTH, height).with(figures());
    }

    private double widestFigure() {
        double widest = 0;
        for (Bar bar : bars) {
            widest = Math.max(widest, LETTERING.width(bar.figure()));
        }
        return widest;
    }

    private void bar(Bar bar, double top, double end) {
        canvas.text(LEFT + 4, top + NAME_BASE, Anchor.START, LETTERING, bar.name());
        double from = 0;
        for (Part part : bar.parts()) {
            double left = axis.place(from, LEFT, end);
            double right = axis.place(from + part.value(), LEFT, end);
            canvas.rectangle(part.style(), left, top + BAR_TOP, right - left, THICKNESS);
            from += part.value();
        }
        double figureAt = axis.place(from, LEFT, end) + 6;
        canvas.text(figureAt, top + BAR_TOP + 15, Anchor.START, LETTERING, bar.figure());
    }

    /** The key to the parts, one a line, each once; answers the height of the canvas. */
    private double key(double top) {
        List<String> named = new ArrayList<>();
        double y = top;
        for (Bar bar : bars) {
            for (Part part : bar.parts()) {
                if (!part.name().isEmpty() && !named.contains(part.name())) {
                    named.add(part.name());
                    canvas.rectangle(part.style(), LEFT, y + 3, 22, 14);
                    canvas.text(LEFT + 30, y + 15, Anchor.START, LETTERING, part.name());
                    y += KEY_LINE;
                }
            }
        }
        return y;
    }

    private FigureTable figures() {
        List<List<String>> rows = new ArrayList<>();
        for (Bar bar : bars) {
            rows.add(List.of(bar.name(), bar.figure()));
        }
        return new FigureTable(List.of(kind, axis.title()), rows);
    }
}
