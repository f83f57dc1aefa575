package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Heading;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.picture.Symbol;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** A meter across a joint and a measured length of cable, and how the reading divides between the two. */
final class MillivoltsAcrossAJoint implements Drawing {
    private static final double CABLE = 104;
    private static final double JOINT = 92;
    private static final double PROBE = 236;
    private static final double METER = 34;

    @Override
    public String name() {
        return "millivolts-across-a-joint";
    }

    @Override
    public List<String> takes() {
        return List.of("reading", "test-current", "span", "resistance-per-metre");
    }

    @Override
    public Picture draw(Given given) {
        Computed working = Computed.by("joint-heat").with("design-current", given.text("test-current"));
        given.number("reading", Units.MILLIVOLT);
        given.number("test-current", Units.AMPERE);
        given.number("span", Units.MILLIMETRE);
        given.number("resistance-per-metre", Units.MILLIOHM_PER_METRE);
        for (String key : takes()) {
            working.with(key, given.text(key));
        }
        Quantity cable = working.result("conductor-drop", Units.MILLIVOLT);
        Quantity joint = working.result("joint-drop", Units.MILLIVOLT);
        Canvas canvas = new Canvas();
        cable(canvas);
        meter(new Schematic(canvas));
        canvas.text(178, METER - 9, Anchor.START, Lettering.SMALL_STRONG, "reads " + given.label("reading"));
        canvas.text(4, CABLE - 18, Anchor.START, Lettering.SMALL, given.label("test-current") + " →");
        span(canvas, given.label("span"));
        canvas.text(4, 182, Anchor.START, Lettering.SMALL, "cable between the probes: " + cable.text(3));
        canvas.text(4, 204, Anchor.START, Lettering.SMALL_STRONG, "left for the joint: " + joint.text(3));
        return new Picture(
                "Millivolts across a joint",
                "A current of " + given.text("test-current") + " flows through a crimped joint and a cable. A meter has one probe on the metal of the"
                        + " terminal and one on the strands of the cable, " + given.text("span") + " along. It reads " + given.text("reading")
                        + ". The cable between the probes accounts for " + cable.text(3) + ", so " + joint.text(3) + " are left for the joint.",
                canvas,
                Picture.WIDTH,
                214);
    }

    private static void cable(Canvas canvas) {
        canvas.rectangle(Style.BOX, JOINT + 30, CABLE - 9, 168, 18);
        canvas.rectangle(Style.SOLID, PROBE - 5, CABLE - 4, 10, 8);
        canvas.rectangle(Style.SOLID, JOINT + 24, CABLE - 4, 6, 8);
        canvas.rectangle(Style.SOLID_ACCENT, JOINT - 6, CABLE - 11, 30, 22);
        canvas.rectangle(Style.SOLID_ACCENT, 26, CABLE - 3, JOINT - 30, 6);
        canvas.line(Style.PLUS, 290, CABLE, 318, CABLE);
    }

    private static void meter(Schematic drawn) {
        drawn.conductor(Style.INK, JOINT - 12, CABLE - 4, JOINT - 12, METER, PROBE, METER, PROBE, CABLE - 4);
        drawn.junction(JOINT - 12, CABLE - 4).junction(PROBE, CABLE - 4);
        drawn.symbol(Symbol.VOLTMETER, 150, METER, Heading.EAST);
    }

    private static void span(Canvas canvas, String length) {
        double y = CABLE + 30;
        canvas.line(Style.FAINT, JOINT - 12, CABLE + 12, JOINT - 12, y + 6).line(Style.FAINT, PROBE, CABLE + 12, PROBE, y + 6);
        canvas.line(Style.FAINT, JOINT - 12, y, PROBE, y);
        canvas.arrowHead(Style.SOLID, JOINT - 12, y, -1, 0).arrowHead(Style.SOLID, PROBE, y, 1, 0);
        canvas.text((JOINT - 12 + PROBE) / 2, y + 20, Anchor.MIDDLE, Lettering.SMALL, "span " + length);
    }
}
