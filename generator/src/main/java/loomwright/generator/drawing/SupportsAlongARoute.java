package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.FigureTable;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** One route, clipped at the spacing of three rule sets: evenly, with a clip at each end, and never further apart than the rule says. */
final class SupportsAlongARoute implements Drawing {
    private static final List<String> RULES = List.of("support-iso", "support-abyc", "support-faa");
    private static final double LEFT = 8;
    private static final double RIGHT = 312;
    private static final double PITCH = 82;
    private static final double HAIR = 1e-9;

    @Override
    public String name() {
        return "supports-along-a-route";
    }

    @Override
    public List<String> takes() {
        return List.of("route-length");
    }

    @Override
    public Picture draw(Given given) {
        double route = given.number("route-length", Units.METRE);
        if (route > 12) {
            throw given.fault("route-length", "is too long to draw every clip; the most is 12 m");
        }
        Canvas canvas = new Canvas();
        List<List<String>> figures = new ArrayList<>();
        for (int i = 0; i < RULES.size(); i++) {
            Row row = PublishedTables.jointsAndSupport().row(RULES.get(i));
            figures.add(strip(canvas, 18 + i * PITCH, row, route));
        }
        double bottom = 18 + RULES.size() * PITCH;
        canvas.text((LEFT + RIGHT) / 2, bottom, Anchor.MIDDLE, Lettering.SMALL, "route " + given.label("route-length"));
        return new Picture(
                        "Clips along one route by three rule sets",
                        "Three level cables of the same route, " + given.text("route-length") + ", one below the other, each with a clip at both ends"
                                + " and evenly between. The widest spacing allowed, the number of clips and their distance stand above each: "
                                + described(figures) + ".",
                        canvas,
                        Picture.WIDTH,
                        bottom + 10)
                .with(new FigureTable(List.of("Rule set", "Spacing at most", "Clips", "Distance of the clips"), figures));
    }

    private static List<String> strip(Canvas canvas, double top, Row row, double route) {
        Quantity most = row.quantity("value", Units.METRE);
        int spaces = (int) Math.ceil(route / most.value() - HAIR);
        Quantity apart = Quantity.of(route / spaces, Units.METRE);
        canvas.text(LEFT, top, Anchor.START, Lettering.SMALL_STRONG, row.text("rule-set"));
        String words = "at most " + most.text() + ": " + (spaces + 1) + " clips";
        canvas.text(LEFT, top + 18, Anchor.START, Lettering.SMALL, words);
        canvas.line(Style.PLUS, LEFT, top + 34, RIGHT, top + 34);
        canvas.line(Style.MINUS, LEFT, top + 40, RIGHT, top + 40);
        for (int i = 0; i <= spaces; i++) {
            double x = LEFT + (RIGHT - LEFT) * i / spaces;
            canvas.rectangle(Style.BOX, x - 4, top + 28, 8, 18);
        }
        return List.of(row.text("rule-set"), most.text(), Integer.toString(spaces + 1), apart.text(2));
    }

    private static String described(List<List<String>> figures) {
        List<String> parts = new ArrayList<>();
        for (List<String> row : figures) {
            parts.add(row.get(0) + ", at most " + row.get(1) + ", " + row.get(2) + " clips " + row.get(3) + " apart");
        }
        return String.join("; ", parts);
    }
}
