package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Heading;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Schematic;
import loomwright.picture.Side;
import loomwright.picture.Style;
import loomwright.picture.Symbol;

/** One voltmeter, read at the fuse panel and at the load while the load runs, and where its leads go. */
final class MeterAtBothEnds implements Drawing {
    private static final double OUT = 34;
    private static final double BACK = 160;
    private static final double MIDDLE = (OUT + BACK) / 2;
    private static final double BATTERY = 24;
    private static final double PANEL = 98;
    private static final double FAR = 236;
    private static final double LOAD = 290;

    @Override
    public String name() {
        return "meter-at-both-ends";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Canvas canvas = new Canvas();
        circuit(new Schematic(canvas));
        canvas.text(PANEL, 18, Anchor.MIDDLE, Lettering.SMALL, "fuse panel");
        canvas.text(LOAD, 18, Anchor.MIDDLE, Lettering.SMALL, "load");
        meterFace(canvas);
        canvas.text(Picture.WIDTH / 2, 320, Anchor.MIDDLE, Lettering.SMALL, "drop = supply reading − load reading");
        return new Picture(
                "One meter read at both ends of a run",
                "A circuit of battery, fuse-link, two conductors and a lamp that glows. A voltmeter is joined across plus and minus at the fuse"
                        + " panel, for the first and third reading, and across the load, for the second. On the meter the red lead is in the"
                        + " socket V, the black lead in COM; the socket A is struck through.",
                canvas,
                Picture.WIDTH,
                330);
    }

    private static void circuit(Schematic drawn) {
        drawn.conductor(Style.PLUS, BATTERY, MIDDLE - 12, BATTERY, OUT, LOAD, OUT, LOAD, MIDDLE);
        drawn.conductor(Style.MINUS, LOAD, MIDDLE, LOAD, BACK, BATTERY, BACK, BATTERY, MIDDLE + 12);
        drawn.symbol(Symbol.BATTERY, BATTERY, MIDDLE, Heading.NORTH);
        drawn.symbol(Symbol.FUSE_LINK, 60, OUT, Heading.EAST);
        drawn.symbol(Symbol.LAMP_LIT, LOAD, MIDDLE, Heading.SOUTH);
        meter(drawn, PANEL, MIDDLE - 26, Side.RIGHT, "1st and 3rd reading");
        meter(drawn, FAR, MIDDLE + 26, Side.LEFT, "2nd reading");
        drawn.current(168, OUT, Heading.EAST).current(168, BACK, Heading.WEST);
        drawn.sign(true, BATTERY + 18, OUT + 22).sign(false, BATTERY + 18, BACK - 10);
    }

    private static void meter(Schematic drawn, double x, double y, Side side, String label) {
        drawn.conductor(Style.ACCENT, x, OUT, x, BACK).junction(x, OUT).junction(x, BACK);
        drawn.symbol(Symbol.VOLTMETER, x, y, Heading.SOUTH, side, label, 84);
    }

    private static void meterFace(Canvas canvas) {
        canvas.rectangle(Style.BOX, 30, 184, 260, 70);
        String[] sockets = {"A", "COM", "V"};
        String[] words = {"not here", "black lead", "red lead"};
        for (int i = 0; i < sockets.length; i++) {
            double x = 80 + i * 80;
            canvas.text(x, 206, Anchor.MIDDLE, Lettering.SMALL_STRONG, sockets[i]);
            canvas.circle(Style.SYMBOL, x, 228, 11);
            if (i == 0) {
                canvas.line(Style.INK, x - 17, 245, x + 17, 211).line(Style.INK, x - 17, 211, x + 17, 245);
            } else {
                canvas.circle(Style.SOLID, x, 228, 6).line(i == 1 ? Style.MINUS : Style.PLUS, x, 228, x, 272);
            }
            canvas.text(x, 290, Anchor.MIDDLE, Lettering.SMALL, words[i]);
        }
    }
}
