package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Schematic;
import loomwright.picture.Style;
import loomwright.quantity.Units;

/** The new circuit of the trailer as it is built: parts where they sit, in the battery box and at the bench, and every wire with its number. */
final class TrailerWiring implements Drawing {
    private static final List<String> RATINGS = List.of("main-fuse", "breaker-rating", "accessory-fuse", "usb-fuse", "trigger-fuse");

    @Override
    public String name() {
        return "trailer-wiring";
    }

    @Override
    public List<String> takes() {
        return List.of(
                "main-fuse", "breaker-rating", "accessory-fuse", "usb-fuse", "trigger-fuse", "bench-size", "trigger-size", "bench-cut", "trigger-cut");
    }

    @Override
    public Picture draw(Given given) {
        RATINGS.forEach(rating -> given.number(rating, Units.AMPERE));
        given.number("bench-size", Units.SQUARE_MILLIMETRE);
        given.number("trigger-size", Units.SQUARE_MILLIMETRE);
        given.number("bench-cut", Units.METRE);
        given.number("trigger-cut", Units.METRE);
        Canvas canvas = new Canvas();
        canvas.rectangle(Style.INK, 2, 24, 316, 230).rectangle(Style.INK, 2, 338, 316, 72);
        canvas.text(8, 17, Anchor.START, Lettering.SMALL_STRONG, "battery box");
        canvas.text(8, 331, Anchor.START, Lettering.SMALL_STRONG, "bench");
        wires(new Schematic(canvas));
        boxes(canvas, given);
        numbers(canvas);
        canvas.text(8, 430, Anchor.START, Lettering.SMALL, "4 to 7: " + given.label("bench-size") + ", cut " + given.label("bench-cut"));
        canvas.text(8, 449, Anchor.START, Lettering.SMALL, "8 and 9: " + given.label("trigger-size") + ", cut " + given.label("trigger-cut"));
        return new Picture(
                "Wiring view of the new circuit",
                "In the battery box: battery G1, main fuse F3, breaker Q1, relay K1, one holder with fuse-links F1 and F2, fuse panel P1 and the negative busbar"
                        + " N. Wire 1 runs from G1 to F3, and Q1 stands on F3. Wire 2 runs from Q1 to K1, 3 to the holder. Wires 4 and 5 run to the bench, to X1 and X2; 6 and 7 come back"
                        + " to N, each " + given.text("bench-size") + ", cut " + given.text("bench-cut")
                        + ". Wire 8 runs from P1 to terminal 86 of K1, 9 from terminal 85 to N, 10 from the minus of G1 to N.",
                canvas,
                Picture.WIDTH,
                456);
    }

    private static void wires(Schematic drawn) {
        drawn.conductor(Style.PLUS, 67, 66, 92, 66).conductor(Style.PLUS, 188, 66, 222, 66);
        drawn.conductor(Style.PLUS, 290, 108, 290, 158);
        drawn.conductor(Style.MINUS, 120, 236, 120, 276, 200, 276, 200, 352).conductor(Style.MINUS, 70, 236, 70, 352);
        drawn.conductor(Style.PLUS, 234, 208, 234, 316, 130, 316, 130, 352).conductor(Style.PLUS, 284, 208, 284, 352);
        drawn.conductor(Style.PLUS, 174, 131, 236, 131, 236, 108);
        drawn.conductor(Style.MINUS, 262, 108, 262, 150, 192, 150, 192, 226, 182, 226);
        drawn.conductor(Style.MINUS, 30, 94, 30, 216);
    }

    private static void boxes(Canvas canvas, Given given) {
        box(canvas, 5, 44, 62, 50, "G1", "battery");
        box(canvas, 92, 44, 46, 50, "F3", given.label("main-fuse"));
        box(canvas, 138, 44, 50, 50, "Q1", given.label("breaker-rating"));
        box(canvas, 222, 44, 88, 64, "K1", "relay");
        box(canvas, 100, 116, 74, 50, "P1, F6", given.label("trigger-fuse"));
        box(canvas, 210, 158, 50, 50, "F1", given.label("accessory-fuse"));
        box(canvas, 260, 158, 50, 50, "F2", given.label("usb-fuse"));
        canvas.rectangle(Style.BOX, 12, 216, 170, 20);
        canvas.text(97, 231, Anchor.MIDDLE, Lettering.SMALL, "N negative busbar");
        box(canvas, 36, 352, 120, 46, "", "X1 accessory");
        box(canvas, 178, 352, 132, 46, "", "X2 outlet pair");
        canvas.text(236, 104, Anchor.MIDDLE, Lettering.SMALL, "86");
        canvas.text(262, 104, Anchor.MIDDLE, Lettering.SMALL, "85");
        double[][] signs = {{73, 54, 1}, {19, 110, 0}, {70, 368, 0}, {130, 368, 1}, {200, 368, 0}, {284, 368, 1}};
        for (double[] at : signs) {
            canvas.text(at[0], at[1], Anchor.MIDDLE, Lettering.SMALL_STRONG, at[2] == 1 ? "+" : "\u2212");
        }
    }

    private static void box(Canvas canvas, double left, double top, double width, double height, String upper, String lower) {
        canvas.rectangle(Style.BOX, left, top, width, height);
        double middle = left + width / 2;
        canvas.text(middle, top + 20, Anchor.MIDDLE, Lettering.SMALL_STRONG, upper);
        canvas.text(middle, top + 38, Anchor.MIDDLE, Lettering.SMALL, lower);
    }

    private static void numbers(Canvas canvas) {
        int[][] places = {{1, 80, 66}, {2, 205, 66}, {3, 290, 133}, {4, 166, 316}, {5, 284, 296}, {6, 70, 296}, {7, 160, 276}, {8, 200, 131}, {9, 192, 188}, {10, 30, 150}};
        for (int[] place : places) {
            WireNumber.draw(canvas, place[1], place[2], place[0]);
        }
    }
}
