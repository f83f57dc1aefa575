package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.RowOfCutOuts;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The same panel twice: the row where it was wished, over a frame, and where it fits. */
final class CutOutsAndFrame implements Drawing {
    private static final double SPAN = 310;

    @Override
    public String name() {
        return "cut-outs-and-frame";
    }

    @Override
    public List<String> takes() {
        List<String> keys = new ArrayList<>(CutOutValues.NAMES);
        keys.addAll(List.of("room-behind", "frame-1-from", "frame-1-to"));
        return keys;
    }

    @Override
    public Picture draw(Given given) {
        RowOfCutOuts row = CutOutValues.row(given);
        given.number("room-behind", Units.MILLIMETRE);
        given.rising(Units.MILLIMETRE, "frame-1-from", "frame-1-to");
        Computed wished = CutOutValues.calculator(given);
        for (String key : List.of("room-behind", "frame-1-from", "frame-1-to")) {
            wished.with(key, given.text(key));
        }
        double last = wished.number("last-centre", Units.MILLIMETRE);
        Quantity fits = wished.result("nearest-first-centre", Units.MILLIMETRE);
        double moved = fits.value() - row.first();
        Canvas canvas = new Canvas();
        double high = row.height() * SPAN / row.width();
        panel(canvas, given, row, 24, row.centres(row.first(), last), Style.WARN);
        panel(canvas, given, row, 72 + high, row.centres(fits.value(), last + moved), Style.ACCENT);
        canvas.text(5, 16, Anchor.START, Lettering.SMALL_STRONG, "wished: first centre " + given.label("first-centre"));
        canvas.text(5, 64 + high, Anchor.START, Lettering.SMALL_STRONG, "fits: first centre " + fits.text());
        return new Picture(
                "A row of cut-outs and the frame behind",
                "The same panel twice, from the front, with an upright frame behind it. Above, the row begins at " + given.text("first-centre")
                        + ", and the room behind the first cut-out overlaps the frame. Below, the row begins at " + fits.text()
                        + ", and the room behind every cut-out is clear.",
                canvas,
                Picture.WIDTH,
                80 + 2 * high);
    }

    private static void panel(Canvas canvas, Given given, RowOfCutOuts row, double top, double[] centres, Style style) {
        double scale = SPAN / row.width();
        double bottom = top + row.height() * scale;
        double from = 5 + given.number("frame-1-from", Units.MILLIMETRE) * scale;
        double to = 5 + given.number("frame-1-to", Units.MILLIMETRE) * scale;
        canvas.rectangle(Style.HATCH, from, top, to - from, bottom - top);
        canvas.rectangle(Style.INK, 5, top, SPAN, bottom - top);
        double y = bottom - row.up() * scale;
        for (double centre : centres) {
            canvas.circle(style, 5 + centre * scale, y, given.number("room-behind", Units.MILLIMETRE) / 2 * scale);
            canvas.circle(Style.INK, 5 + centre * scale, y, row.diameter() / 2 * scale);
        }
        canvas.text((from + to) / 2, bottom - 8, Anchor.MIDDLE, Lettering.SMALL, "frame");
        canvas.text(5 + SPAN - 6, bottom - 8, Anchor.END, Lettering.SMALL, "outer ring: room behind");
    }
}
