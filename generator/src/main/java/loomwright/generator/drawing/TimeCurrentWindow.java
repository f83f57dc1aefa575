package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Axis;
import loomwright.picture.Canvas;
import loomwright.picture.FigureTable;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.picture.Tick;
import loomwright.quantity.NumberText;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** The gates of one fuse-link in print: at each current, from the earliest to the latest time it may open. */
final class TimeCurrentWindow implements Drawing {
    private static final double LEFT = 52;
    private static final double RIGHT = 312;
    private static final double TOP = 34;
    private static final double BOTTOM = 246;
    private static final double HALF_BAR = 10;
    private static final Axis TIME = Axis.logarithmic("Opening time (s)", 0.01, 4000);

    private record Bar(Quantity share, double amperes, Quantity earliest, Quantity latest) {}

    @Override
    public String name() {
        return "time-current-window";
    }

    @Override
    public List<String> takes() {
        return List.of("fuse-type", "rating");
    }

    @Override
    public Picture draw(Given given) {
        List<Bar> bars = bars(given);
        Canvas canvas = new Canvas();
        canvas.text(1, 14, Anchor.START, Lettering.SMALL, TIME.title());
        for (Tick tick : TIME.ticks()) {
            if (!tick.text().isEmpty()) {
                double y = TIME.place(tick.value(), BOTTOM, TOP);
                canvas.line(Style.FAINT, LEFT, y, RIGHT, y);
                canvas.text(LEFT - 6, y + 5, Anchor.END, Lettering.SMALL, tick.text());
            }
        }
        for (int i = 0; i < bars.size(); i++) {
            bar(canvas, bars.get(i), LEFT + (i + 0.5) * (RIGHT - LEFT) / bars.size());
        }
        canvas.line(Style.INK, LEFT, TOP, LEFT, BOTTOM);
        canvas.text((LEFT + RIGHT) / 2, BOTTOM + 58, Anchor.MIDDLE, Lettering.SMALL, "Current through a " + given.label("rating") + " fuse-link");
        return new Picture(
                        "The window of opening times",
                        "An upright scale of time and a bar for each current in the data sheet of a fuse-link of " + given.text("rating")
                                + ". The foot of a bar is the earliest time it may open, the head the latest. The larger the current, the lower"
                                + " the bar stands.",
                        canvas,
                        Picture.WIDTH,
                        BOTTOM + 68)
                .with(figures(bars));
    }

    private static void bar(Canvas canvas, Bar bar, double x) {
        double head = TIME.place(bar.latest.value(), BOTTOM, TOP);
        double foot = TIME.place(bar.earliest.value(), BOTTOM, TOP);
        canvas.rectangle(Style.SOLID_ACCENT, x - HALF_BAR, head, 2 * HALF_BAR, foot - head);
        overGrid(canvas, x, head - 5, bar.latest.text());
        overGrid(canvas, x, foot + 15, bar.earliest.text());
        canvas.text(x, BOTTOM + 18, Anchor.MIDDLE, Lettering.SMALL_STRONG, amperes(bar));
        canvas.text(x, BOTTOM + 35, Anchor.MIDDLE, Lettering.SMALL, bar.share.text());
    }

    /** A text on a patch of the page, so that no line of the grid strikes through it. */
    private static void overGrid(Canvas canvas, double x, double y, String text) {
        double width = Lettering.SMALL.width(text) + 4;
        canvas.rectangle(Style.PAPER, x - width / 2, y - 12, width, 15);
        canvas.text(x, y, Anchor.MIDDLE, Lettering.SMALL, text);
    }

    /** A bar for each published gate that has both ends. */
    private static List<Bar> bars(Given given) {
        double rating = given.number("rating", Units.AMPERE);
        given.option("fuse-type", "time-current");
        List<Bar> bars = new ArrayList<>();
        for (Row row : PublishedTables.fuseGates().rows()) {
            boolean twoEnds = row.has("shortest") && row.has("longest") && row.source().standing().mayPass();
            if (twoEnds && row.text("fuse").equals(given.text("fuse-type")) && isFor(row, rating)) {
                Quantity share = row.quantity("current-share");
                double amperes = rating * share.base();
                bars.add(new Bar(share, amperes, time(given, amperes, "earliest"), time(given, amperes, "latest")));
            }
        }
        if (bars.isEmpty()) {
            throw given.fault("rating", "has no opening times in print for this kind of fuse-link");
        }
        return bars;
    }

    private static boolean isFor(Row row, double rating) {
        return !row.has("rating-from")
                || rating >= row.quantity("rating-from").value() && rating <= row.quantity("rating-to").value();
    }

    private static Quantity time(Given given, double amperes, String end) {
        return Computed.by("time-current")
                .with("fuse-type", given.text("fuse-type"))
                .with("rating", given.text("rating"))
                .with("current", amperes, Units.AMPERE)
                .result(end, Units.SECOND);
    }

    private static String amperes(Bar bar) {
        return NumberText.significant(bar.amperes, 3) + "\u00a0A";
    }

    private static FigureTable figures(List<Bar> bars) {
        List<List<String>> rows = new ArrayList<>();
        for (Bar bar : bars) {
            rows.add(List.of(amperes(bar), bar.share.text(), bar.earliest.text(), bar.latest.text()));
        }
        return new FigureTable(List.of("Current", "Share of the rating", "Earliest", "Latest"), rows);
    }
}
