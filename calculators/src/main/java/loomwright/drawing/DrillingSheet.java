package loomwright.drawing;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** A panel with its cut-outs, printed at full size, with a bar to check the print by. */
final class DrillingSheet implements Drawing {
    private static final double MM = Picture.UNITS_PER_MILLIMETRE;
    private static final double LARGEST = 152;
    private static final double TOP = 62;
    private static final double BAR = 100;

    @Override
    public String name() {
        return "drilling-sheet";
    }

    @Override
    public List<String> takes() {
        return RowOfCutOuts.VALUES;
    }

    @Override
    public Picture draw(Given given) {
        RowOfCutOuts row = RowOfCutOuts.of(given);
        if (row.width() > LARGEST) {
            throw given.fault("panel-width", "must be no more than 152 mm to go on one sheet at full size");
        }
        double last = RowOfCutOuts.calculator(given).number("last-centre", Units.MILLIMETRE);
        double left = (Picture.WIDTH - row.width() * MM) / 2;
        double bottom = TOP + row.height() * MM;
        double axis = bottom - row.up() * MM;
        Canvas canvas = new Canvas();
        canvas.rectangle(Style.INK, left, TOP, row.width() * MM, row.height() * MM);
        canvas.line(Style.FAINT, left, axis, left + row.width() * MM, axis);
        canvas.text(left, 16, Anchor.START, Lettering.SMALL, "mm from the left edge");
        List<String> places = new ArrayList<>();
        for (double centre : row.centres(row.first(), last)) {
            String place = Quantity.of(centre, Units.MILLIMETRE).text().replace("\u00a0mm", "").replace(" mm", "");
            places.add(place);
            cutOut(canvas, left + centre * MM, axis, row.diameter() * MM / 2, bottom, place);
        }
        canvas.text(left + 4, axis - 5, Anchor.START, Lettering.SMALL, given.label("row-height") + " up");
        canvas.text(left, bottom + 20, Anchor.START, Lettering.SMALL, "hole " + given.label("hole-diameter") + "; this is the lower edge");
        bar(canvas, bottom + 52);
        return new Picture(
                        "A drilling sheet at full size",
                        "A panel " + given.text("panel-width") + " wide and " + given.text("panel-height") + " high, with cut-outs of "
                                + given.text("hole-diameter") + ". Their centres lie " + String.join(" and ", places)
                                + " mm from the left edge and " + given.text("row-height")
                                + " above the lower edge, each marked with a cross. Below is a bar of 100 mm, parted into tens, to check the print by.",
                        canvas,
                        Picture.WIDTH,
                        bottom + 84)
                .atFullSize();
    }

    private static void cutOut(Canvas canvas, double x, double y, double radius, double bottom, String place) {
        canvas.circle(Style.INK, x, y, radius);
        canvas.line(Style.FAINT, x, 36, x, bottom);
        canvas.line(Style.ACCENT, x - 8, y, x + 8, y).line(Style.ACCENT, x, y - 8, x, y + 8);
        canvas.text(x, 34, Anchor.MIDDLE, Lettering.SMALL_STRONG, place);
    }

    private static void bar(Canvas canvas, double y) {
        double left = (Picture.WIDTH - BAR * MM) / 2;
        canvas.line(Style.INK, left, y, left + BAR * MM, y);
        for (int tens = 0; tens <= 10; tens++) {
            double x = left + tens * 10 * MM;
            canvas.line(Style.INK, x, y, x, tens % 5 == 0 ? y - 12 : y - 7);
        }
        canvas.text(Picture.WIDTH / 2, y + 20, Anchor.MIDDLE, Lettering.SMALL, "on paper this bar is 100 mm");
    }
}
