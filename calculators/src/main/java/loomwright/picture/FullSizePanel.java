package loomwright.picture;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/**
 * A panel with its row of cut-outs at full size, with a bar to check the print by. Of a panel larger than the paper only the part round the
 * row is drawn; its cut sides are left open.
 */
public final class FullSizePanel {
    /** The widest piece of a panel that goes on one sheet, in millimetres. */
    public static final double WIDEST = 152;

    private static final double HIGHEST = 150;
    private static final double MM = Picture.UNITS_PER_MILLIMETRE;
    private static final double TOP = 62;
    private static final double BAR = 100;

    private final RowOfCutOuts row;
    private final double last;
    private final double width;
    private final double height;
    /** Where on the panel the piece begins, from its left and lower edge. */
    private final double from;
    private final double above;

    private final double left;
    private final double bottom;
    private final Canvas canvas = new Canvas();

    private FullSizePanel(RowOfCutOuts row, double last) {
        this.row = row;
        this.last = last;
        this.width = Math.min(row.width(), WIDEST);
        this.height = Math.min(row.height(), HIGHEST);
        this.from = begin((row.first() + last) / 2, width, row.width());
        this.above = begin(row.up(), height, row.height());
        this.left = (Picture.WIDTH - width * MM) / 2;
        this.bottom = TOP + height * MM;
    }

    private static double begin(double middle, double piece, double whole) {
        return Math.max(0, Math.min(middle - piece / 2, whole - piece));
    }

    /** Whether the whole row goes on one sheet. */
    public static boolean holds(RowOfCutOuts row, double last) {
        return last - row.first() + row.diameter() <= WIDEST && row.diameter() <= HIGHEST;
    }

    /**
     * The panel.
     *
     * @param last the last centre from the left edge, in millimetres
     * @param size the size of the panel in words
     * @param hole the diameter of a cut-out as it was written
     * @param up the height of the centres as it was written
     */
    public static Picture of(RowOfCutOuts row, double last, String size, String hole, String up) {
        return new FullSizePanel(row, last).drawn(size, hole, up);
    }

    private Picture drawn(String size, String hole, String up) {
        double axis = bottom - (row.up() - above) * MM;
        outline();
        canvas.line(Style.FAINT, left, axis, left + width * MM, axis);
        canvas.text(left, 16, Anchor.START, Lettering.SMALL, "mm from the left edge");
        List<String> places = new ArrayList<>();
        for (double centre : row.centres(row.first(), last)) {
            String place = Quantity.of(centre, Units.MILLIMETRE).text().replace("\u00a0mm", "").replace(" mm", "");
            places.add(place);
            cutOut(left + (centre - from) * MM, axis, place);
        }
        canvas.text(left + 4, axis - 5, Anchor.START, Lettering.SMALL, label(up) + " up");
        canvas.text(left, bottom + 20, Anchor.START, Lettering.SMALL,
                "hole " + label(hole) + "; " + (above == 0 ? "this is the lower edge" : "the panel goes on below"));
        bar(bottom + 52);
        return new Picture(
                        "A drilling sheet at full size",
                        "A panel " + size + ", with cut-outs of " + hole + ". Their centres lie " + String.join(" and ", places)
                                + " mm from the left edge and " + up + " above the lower edge, each marked with a cross." + beyond()
                                + " Below is a bar of 100 mm, parted into tens, to check the print by.",
                        canvas,
                        Picture.WIDTH,
                        bottom + 84)
                .atFullSize();
    }

    private String beyond() {
        return isWhole() ? "" : " The panel is larger than the sheet: sides drawn faint are not its edges.";
    }

    private boolean isWhole() {
        return width == row.width() && height == row.height();
    }

    private static String label(String text) {
        return text.replace(' ', '\u00a0');
    }

    /** The sides of the panel; one that is only the end of the sheet is faint. */
    private void outline() {
        if (isWhole()) {
            canvas.rectangle(Style.INK, left, TOP, width * MM, height * MM);
            return;
        }
        double right = left + width * MM;
        canvas.line(style(from == 0), left, TOP, left, bottom);
        canvas.line(style(from + width == row.width()), right, TOP, right, bottom);
        canvas.line(style(above == 0), left, bottom, right, bottom);
        canvas.line(style(above + height == row.height()), left, TOP, right, TOP);
    }

    private static Style style(boolean edge) {
        return edge ? Style.INK : Style.FAINT;
    }

    private void cutOut(double x, double y, String place) {
        canvas.circle(Style.INK, x, y, row.diameter() * MM / 2);
        canvas.line(Style.FAINT, x, 36, x, bottom);
        canvas.line(Style.ACCENT, x - 8, y, x + 8, y).line(Style.ACCENT, x, y - 8, x, y + 8);
        canvas.text(x, 34, Anchor.MIDDLE, Lettering.SMALL_STRONG, place);
    }

    private void bar(double y) {
        double start = (Picture.WIDTH - BAR * MM) / 2;
        canvas.line(Style.INK, start, y, start + BAR * MM, y);
        for (int tens = 0; tens <= 10; tens++) {
            double x = start + tens * 10 * MM;
            canvas.line(Style.INK, x, y, x, tens % 5 == 0 ? y - 12 : y - 7);
        }
        canvas.text(Picture.WIDTH / 2, y + 20, Anchor.MIDDLE, Lettering.SMALL, "on paper this bar is 100 mm");
    }
}
