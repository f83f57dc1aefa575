package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;

/** The two kinds of 12 V outlet from the front, drawn to one scale. */
final class TwoOutletFaces implements Drawing {
    /** Units of the canvas for a millimetre. */
    private static final double SCALE = 5.6;

    private static final double CENTRE = 96;
    private static final double SMALL_X = 84;
    private static final double LARGE_X = 236;
    private static final double RIM = 2;

    @Override
    public String name() {
        return "two-outlet-faces";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Quantity small = size("iso-4165-hole");
        Quantity large = size("sae-j563-inside");
        Quantity pin = size("iso-4165-pin");
        Canvas canvas = new Canvas();
        face(canvas, SMALL_X, small, "ISO 4165", small.text());
        face(canvas, LARGE_X, large, "SAE J563", "about\u00a0" + large.text());
        canvas.circle(Style.SHADE, SMALL_X, CENTRE, pin.value() * SCALE / 2);
        canvas.circle(Style.SHADE, LARGE_X, CENTRE, pin.value() * SCALE / 2);
        for (double x : new double[] {SMALL_X, LARGE_X}) {
            canvas.text(x, CENTRE + 6, Anchor.MIDDLE, Lettering.STRONG, "+");
        }
        canvas.text(SMALL_X, CENTRE + 27, Anchor.MIDDLE, Lettering.STRONG, "\u2212");
        canvas.text(LARGE_X, CENTRE + 50, Anchor.MIDDLE, Lettering.STRONG, "\u2212");
        return new Picture(
                "Two kinds of outlet from the front, to one scale",
                "Two round holes side by side. The left, ISO 4165, is " + small.text() + " across; the right, SAE J563, the lighter type, is about "
                        + large.text() + ". In the middle of each stands a plus sign, at the wall a minus sign.",
                canvas,
                Picture.WIDTH,
                222);
    }

    private static void face(Canvas canvas, double x, Quantity size, String name, String words) {
        double radius = size.value() * SCALE / 2;
        canvas.text(x, 22, Anchor.MIDDLE, Lettering.SMALL_STRONG, name);
        canvas.circle(Style.SYMBOL, x, CENTRE, radius + RIM * SCALE / 2);
        canvas.circle(Style.SYMBOL, x, CENTRE, radius);
        double y = 188;
        canvas.line(Style.FAINT, x - radius, CENTRE, x - radius, y + 6).line(Style.FAINT, x + radius, CENTRE, x + radius, y + 6);
        canvas.line(Style.INK, x - radius + 9, y, x + radius - 9, y);
        canvas.arrowHead(Style.SOLID, x - radius, y, -1, 0).arrowHead(Style.SOLID, x + radius, y, 1, 0);
        canvas.text(x, y + 24, Anchor.MIDDLE, Lettering.SMALL, words);
    }

    private static Quantity size(String item) {
        return PublishedTables.sockets().row(item).quantity("value", Units.MILLIMETRE);
    }
}
