package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Style;

/** A single-core and a two-core cable, peeled back step by step. */
final class CableAnatomy implements Drawing {
    private static final double SINGLE = 60;
    private static final double SHEATH_TOP = 158;
    private static final double CORE_HALF = 15;

    @Override
    public String name() {
        return "cable-anatomy";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Canvas canvas = new Canvas();
        core(canvas, 4, 130, 222, SINGLE, 20, 9);
        label(canvas, 60, 18, 40, "insulation");
        label(canvas, 196, 18, 46, "strand");
        bracket(canvas, 230, SINGLE - 22, SINGLE + 22);
        canvas.text(242, SINGLE - 12, Anchor.START, Lettering.SMALL, List.of("conductor:", "all strands", "together"));

        canvas.rectangle(Style.BOX, 4, SHEATH_TOP, 96, 72);
        double plus = SHEATH_TOP + 19;
        double minus = SHEATH_TOP + 53;
        core(canvas, 100, 190, 254, plus, CORE_HALF, 7);
        core(canvas, 100, 190, 254, minus, CORE_HALF, 7);
        canvas.text(270, plus + 6, Anchor.MIDDLE, Lettering.STRONG, "+");
        canvas.text(270, minus + 6, Anchor.MIDDLE, Lettering.STRONG, "−");
        label(canvas, 52, SHEATH_TOP - 22, SHEATH_TOP, "sheath");
        label(canvas, 146, SHEATH_TOP - 22, plus - CORE_HALF, "core");
        canvas.text(4, 256, Anchor.START, Lettering.SMALL, "Not to scale.");
        return new Picture(
                "The parts of a cable",
                "Above, a single-core cable: its insulation is cut back from a bundle of fine strands that together are the conductor. Below, a"
                        + " two-core cable: its sheath is cut back from two cores, marked plus and minus, each with its own insulation and"
                        + " strands.",
                canvas,
                Picture.WIDTH,
                264);
    }

    /** A core: insulation from {@code from} to {@code cut}, then strands that open a little towards {@code tip}. */
    private static void core(Canvas canvas, double from, double cut, double tip, double y, double half, int strands) {
        double inner = half * 0.62;
        for (int i = 0; i < strands; i++) {
            double share = 2.0 * i / (strands - 1) - 1;
            double near = y + share * inner;
            double far = y + share * inner * 1.5;
            double bend = cut + (tip - cut) * 0.6;
            canvas.path(Style.INK, new Outline().move(cut, near).line(bend, near).curve(bend + 12, near, tip - 10, far, tip, far));
        }
        canvas.rectangle(Style.BOX, from, y - half, cut - from, 2 * half);
    }

    private static void label(Canvas canvas, double x, double y, double to, String word) {
        canvas.line(Style.FAINT, x, y + 5, x, to);
        canvas.text(x, y, Anchor.MIDDLE, Lettering.SMALL, word);
    }

    private static void bracket(Canvas canvas, double x, double top, double bottom) {
        canvas.path(Style.FAINT, new Outline().move(x - 4, top).line(x, top).line(x, bottom).line(x - 4, bottom));
    }
}
