package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Heading;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** Two protected feeds whose returns meet on one negative busbar: the cable to the battery carries both. */
final class ReturnCurrentsAddUp implements Drawing {
    private static final double PANEL = 76;
    private static final double BENCH = 236;
    private static final double MIDDLE = 156;
    private static final double BAR = 122;

    @Override
    public String name() {
        return "return-currents-add-up";
    }

    @Override
    public List<String> takes() {
        return List.of("feed-fuse", "breaker-rating");
    }

    @Override
    public Picture draw(Given given) {
        given.number("feed-fuse", Units.AMPERE);
        given.number("breaker-rating", Units.AMPERE);
        Quantity sum = Computed.by("panel-headroom")
                .with("way-1-current", given.text("feed-fuse"))
                .with("new-current", given.text("breaker-rating"))
                .with("panel-limit", "1000 A")
                .result("current-after", Units.AMPERE);
        String together = sum.text(3).replace(' ', '\u00a0');
        Canvas canvas = new Canvas();
        Schematic drawn = new Schematic(canvas);
        source(canvas, PANEL, "loads of the panel", "fuse " + given.label("feed-fuse"));
        source(canvas, BENCH, "bench outlets", "breaker " + given.label("breaker-rating"));
        drawn.conductor(Style.MINUS, PANEL, 60, PANEL, BAR).conductor(Style.MINUS, BENCH, 60, BENCH, BAR);
        drawn.conductor(Style.MINUS, MIDDLE, BAR + 20, MIDDLE, 206);
        drawn.current(PANEL, 84, Heading.SOUTH).current(BENCH, 84, Heading.SOUTH).current(MIDDLE, 170, Heading.SOUTH);
        canvas.text(PANEL + 10, 98, Anchor.START, Lettering.SMALL, "≤ " + given.label("feed-fuse"));
        canvas.text(BENCH + 10, 98, Anchor.START, Lettering.SMALL, "≤ " + given.label("breaker-rating"));
        canvas.text(MIDDLE + 12, 184, Anchor.START, Lettering.STRONG, "≤ " + together);
        canvas.text(MIDDLE - 12, 184, Anchor.END, Lettering.SMALL, "no fuse here");
        canvas.rectangle(Style.BOX, 20, BAR, 280, 20);
        canvas.text(160, BAR + 15, Anchor.MIDDLE, Lettering.SMALL, "− negative busbar");
        canvas.rectangle(Style.BOX, MIDDLE - 60, 206, 120, 28);
        canvas.text(MIDDLE, 225, Anchor.MIDDLE, Lettering.SMALL, "battery −");
        return new Picture(
                "Returns add up on the negative busbar",
                "Two conductors come down to the negative busbar: from the loads of the panel, held to " + given.text("feed-fuse")
                        + " by its fuse, and from the bench outlets, held to " + given.text("breaker-rating")
                        + " by their breaker. One cable leaves the busbar to the minus of the battery. It may have to carry " + sum.text(3)
                        + ", and no fuse is in it.",
                canvas,
                Picture.WIDTH,
                240);
    }

    private static void source(Canvas canvas, double x, String name, String protection) {
        canvas.rectangle(Style.BOX, x - 70, 8, 140, 52);
        canvas.text(x, 30, Anchor.MIDDLE, Lettering.SMALL, name);
        canvas.text(x, 49, Anchor.MIDDLE, Lettering.SMALL, protection);
    }
}
