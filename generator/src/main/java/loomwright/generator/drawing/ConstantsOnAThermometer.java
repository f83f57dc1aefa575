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
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** The temperature of the copper that each published voltage-drop constant stands for. */
final class ConstantsOnAThermometer implements Drawing {
    private static final double TUBE_TOP = 100;
    private static final double TUBE_BOTTOM = 116;
    private static final double START = 26;
    private static final double END = 306;

    @Override
    public String name() {
        return "constants-on-a-thermometer";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Axis axis = Axis.linear("Temperature of the copper (°C)", 0, 90).parts(9);
        Canvas canvas = new Canvas();
        tube(canvas, axis);
        double standard = mark(canvas, axis, "iacs-resistivity", 62);
        canvas.text(standard + 6, 66, Anchor.START, Lettering.SMALL, "standard copper, 1/58");
        double cold = mark(canvas, axis, "metric-drop", 90);
        canvas.text(cold, 87, Anchor.MIDDLE, Lettering.SMALL, "0.0164");
        double warm = mark(canvas, axis, "chandlery-conductivity", 84);
        mark(canvas, axis, "mil-foot-small-craft", 84);
        canvas.text(warm + 6, 88, Anchor.START, Lettering.SMALL, "56, and K = 10.75");
        double hot = mark(canvas, axis, "mil-foot-building", 16);
        canvas.text(hot - 6, 18, Anchor.END, Lettering.SMALL, "K = 12.9,");
        canvas.text(hot - 6, 35, Anchor.END, Lettering.SMALL, "stranding included");
        return new Picture(
                        "The copper temperature in each constant",
                        "A temperature scale from 0 °C to 90 °C with a mark where copper would have the resistance each constant stands for: 0.0164"
                                + " lowest, then the 20 °C standard, then 56 and 10.75 together, and 12.9 far above.",
                        canvas,
                        Picture.WIDTH,
                        166)
                .with(figures());
    }

    private static void tube(Canvas canvas, Axis axis) {
        canvas.rectangle(Style.BOX, START - 14, TUBE_TOP, END - START + 20, TUBE_BOTTOM - TUBE_TOP);
        canvas.circle(Style.SOLID_ACCENT, START - 14, (TUBE_TOP + TUBE_BOTTOM) / 2, 10);
        for (Tick tick : axis.ticks()) {
            double x = axis.place(tick.value(), START, END);
            canvas.line(Style.INK, x, TUBE_BOTTOM, x, TUBE_BOTTOM + 5);
            canvas.text(x, TUBE_BOTTOM + 20, Anchor.MIDDLE, Lettering.SMALL, tick.text());
        }
        canvas.text((START + END) / 2, TUBE_BOTTOM + 40, Anchor.MIDDLE, Lettering.SMALL, axis.title());
    }

    /** A line across the tube up to {@code y}; answers where it stands. */
    private static double mark(Canvas canvas, Axis axis, String constant, double y) {
        double x = axis.place(row(constant).quantity("implied-temperature").value(), START, END);
        canvas.line(Style.ACCENT, x, TUBE_BOTTOM, x, y);
        return x;
    }

    private static Row row(String constant) {
        return PublishedTables.copperConstants().row(constant);
    }

    private static FigureTable figures() {
        List<List<String>> rows = new ArrayList<>();
        for (String constant :
                List.of("metric-drop", "iacs-resistivity", "chandlery-conductivity", "mil-foot-small-craft", "mil-foot-building")) {
            Row row = row(constant);
            String value = row.text("value") + " " + row.text("unit");
            rows.add(List.of(row.text("says"), value, row.quantity("implied-temperature").in(Units.CELSIUS).text()));
        }
        return new FigureTable(List.of("Constant", "Value", "Temperature of the copper"), rows);
    }
}
