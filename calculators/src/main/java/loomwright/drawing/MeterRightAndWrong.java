package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Heading;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Schematic;
import loomwright.picture.Style;
import loomwright.picture.Symbol;

/** Volts, amperes and ohms: the right way to join the meter on the left, a wrong one on the right. */
final class MeterRightAndWrong implements Drawing {
    private static final double COLUMN = 164;
    private static final double ROW = 158;
    private static final double FIRST = 30;
    private static final double HEIGHT = 76;
    private static final double BATTERY = 26;
    private static final double ACROSS = 76;
    private static final double LOAD = 126;

    @Override
    public String name() {
        return "meter-right-and-wrong";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Canvas canvas = new Canvas();
        canvas.text(4, 16, Anchor.START, Lettering.STRONG, "right").text(4 + COLUMN, 16, Anchor.START, Lettering.STRONG, "wrong");
        circuit(canvas, 0, 0, false, "V", false, true, "volts: across");
        circuit(canvas, 1, 0, false, "V", true, false, "load stays off");
        circuit(canvas, 0, 1, false, "A", true, true, "amperes: in line");
        circuit(canvas, 1, 1, false, "A", false, false, "short circuit!");
        circuit(canvas, 0, 2, true, "Ω", false, true, "ohms: all dead");
        circuit(canvas, 1, 2, false, "Ω", false, false, "ohms on live wires");
        return new Picture(
                "Meter connections, right and wrong",
                "Six small circuits of a battery and a lamp, in two columns. Volts: the meter stands across the lamp, right; in the loop,"
                        + " wrong, for the lamp stays off. Amperes: the meter stands in the loop, right; across the lamp, wrong, a short circuit."
                        + " Ohms: the battery is disconnected, right; the battery is still joined, wrong. Right ones carry a tick, wrong ones a cross.",
                canvas,
                Picture.WIDTH,
                FIRST + 3 * ROW - 10);
    }

    private static void circuit(Canvas canvas, int column, int row, boolean dead, String meter, boolean inLoop, boolean right, String words) {
        double x = column * COLUMN;
        double top = FIRST + row * ROW + 18;
        double bottom = top + HEIGHT;
        double middle = (top + bottom) / 2;
        Schematic drawn = new Schematic(canvas);
        double from = dead ? x + BATTERY + 22 : x + BATTERY;
        if (!dead) {
            drawn.conductor(Style.PLUS, x + BATTERY, middle, x + BATTERY, top);
            drawn.conductor(Style.MINUS, x + BATTERY, middle, x + BATTERY, bottom);
        }
        drawn.conductor(Style.PLUS, from, top, x + LOAD, top, x + LOAD, middle);
        drawn.conductor(Style.MINUS, x + LOAD, middle, x + LOAD, bottom, from, bottom);
        if (dead) {
            drawn.conductor(Style.PLUS, x + BATTERY, middle, x + BATTERY, middle - 22);
            drawn.conductor(Style.MINUS, x + BATTERY, middle, x + BATTERY, middle + 22);
        }
        drawn.symbol(Symbol.BATTERY, x + BATTERY, middle, Heading.NORTH);
        drawn.symbol(!dead && (right || "Ω".equals(meter)) ? Symbol.LAMP_LIT : Symbol.LAMP, x + LOAD, middle, Heading.SOUTH);
        if (inLoop) {
            meter(canvas, x + ACROSS, top, meter);
        } else {
            drawn.conductor(Style.ACCENT, x + ACROSS, top, x + ACROSS, bottom).junction(x + ACROSS, top).junction(x + ACROSS, bottom);
            meter(canvas, x + ACROSS, middle, meter);
        }
        verdict(canvas, x + 12, bottom + 30, right);
        canvas.text(x + 24, bottom + 35, Anchor.START, Lettering.SMALL, words);
    }

    private static void meter(Canvas canvas, double x, double y, String letter) {
        canvas.circle(Style.SYMBOL, x, y, 15);
        canvas.text(x, y + 6, Anchor.MIDDLE, Lettering.STRONG, letter);
    }

    private static void verdict(Canvas canvas, double x, double y, boolean right) {
        if (right) {
            canvas.line(Style.ACCENT, x - 7, y, x - 2, y + 6).line(Style.ACCENT, x - 2, y + 6, x + 8, y - 8);
        } else {
            canvas.line(Style.INK, x - 7, y - 7, x + 7, y + 7).line(Style.INK, x - 7, y + 7, x + 7, y - 7);
        }
    }
}
