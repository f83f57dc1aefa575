package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** Three conductors that all pass for "twelve gauge", each drawn as one solid disc of its copper, to one scale. */
final class CrossSectionsSideBySide implements Drawing {
    private static final double UNITS_PER_MILLIMETRE = 48;
    private static final double MIDDLE = 62;
    private static final double PITCH = 107;

    @Override
    public String name() {
        return "cross-sections-side-by-side";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Computed gauge = Computed.by("gauge-convert").with("size", "12 AWG");
        Quantity american = gauge.result("area", Units.SQUARE_MILLIMETRE);
        Quantity automotive = gauge.result("sae-area", Units.SQUARE_MILLIMETRE);
        Quantity metric = Quantity.of(2.5, Units.SQUARE_MILLIMETRE);
        Canvas canvas = new Canvas();
        double ring = radius(american);
        disc(canvas, 0, ring, american, "12 AWG");
        disc(canvas, 1, ring, automotive, "12 SAE");
        disc(canvas, 2, ring, metric, "2.5 mm²");
        scaleBar(canvas);
        return new Picture(
                "12 AWG, 12 SAE and 2.5 mm² as solid copper to one scale",
                "Three copper discs drawn to one scale, the air between strands left out: 12 AWG with " + american.text(3)
                        + ", 12 SAE with " + automotive.text(3) + " and 2.5 mm². A thin ring of the size of 12 AWG round each shows what is"
                        + " missing.",
                canvas,
                Picture.WIDTH,
                212);
    }

    private static double radius(Quantity area) {
        return UNITS_PER_MILLIMETRE * Math.sqrt(area.value() / Math.PI);
    }

    private static void disc(Canvas canvas, int place, double ring, Quantity area, String name) {
        double x = PITCH * place + PITCH / 2 - 0.5;
        canvas.circle(Style.SOLID, x, MIDDLE, radius(area));
        canvas.circle(Style.FAINT, x, MIDDLE, ring);
        canvas.text(x, 134, Anchor.MIDDLE, Lettering.SMALL_STRONG, name);
        canvas.text(x, 152, Anchor.MIDDLE, Lettering.SMALL, area.text(3));
    }

    private static void scaleBar(Canvas canvas) {
        double y = 184;
        canvas.line(Style.INK, 8, y, 8 + UNITS_PER_MILLIMETRE, y);
        canvas.line(Style.INK, 8, y - 6, 8, y + 6);
        canvas.line(Style.INK, 8 + UNITS_PER_MILLIMETRE, y - 6, 8 + UNITS_PER_MILLIMETRE, y + 6);
        canvas.text(16 + UNITS_PER_MILLIMETRE, y + 5, Anchor.START, Lettering.SMALL, "1\u00a0mm, on this scale");
    }
}
