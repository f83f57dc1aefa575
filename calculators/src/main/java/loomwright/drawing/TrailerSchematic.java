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
import loomwright.quantity.Units;

/** The new circuit of the trailer with its names and wire numbers: breaker, relay K1, two fused branches, and the trigger. */
final class TrailerSchematic implements Drawing {
    private static final double PLUS = 22;
    private static final double MINUS = 298;
    private static final double SUPPLY = 66;
    private static final double SWITCH = 138;
    private static final double ACCESSORY = 222;
    private static final double PAIR = 304;
    private static final double TRIGGER = 396;

    @Override
    public String name() {
        return "trailer-schematic";
    }

    @Override
    public List<String> takes() {
        return List.of("battery-voltage", "main-fuse", "breaker-rating", "accessory-fuse", "usb-fuse", "trigger-fuse");
    }

    @Override
    public Picture draw(Given given) {
        given.number("battery-voltage", Units.VOLT);
        for (String rating : takes().subList(1, 6)) {
            given.number(rating, Units.AMPERE);
        }
        Canvas canvas = new Canvas();
        Schematic drawn = new Schematic(canvas);
        conductors(drawn);
        parts(drawn, given);
        canvas.text(MINUS - 6, TRIGGER + 54, Anchor.END, Lettering.SMALL, "N negative busbar");
        numbers(canvas);
        return new Picture(
                "Schematic of the new circuit",
                "Battery G1, main fuse F3 of " + given.text("main-fuse") + ", breaker Q1 of " + given.text("breaker-rating")
                        + " and the contact of relay K1 stand one after the other. Behind K1"
                        + " the circuit parts: fuse-link F1 of " + given.text("accessory-fuse") + " feeds accessory outlet X1, and fuse-link F2 of "
                        + given.text("usb-fuse") + " feeds the converter of outlet pair X2. Both return to the negative busbar N by wires of"
                        + " their own. Below, way 6 of the fuse panel, with fuse-link F6 of " + given.text("trigger-fuse")
                        + ", feeds the coil of K1. Wires are numbered 1 to 10.",
                canvas,
                Picture.WIDTH,
                TRIGGER + 62);
    }

    private static void conductors(Schematic drawn) {
        drawn.conductor(Style.PLUS, 246, SUPPLY, PLUS, SUPPLY, PLUS, PAIR, 206, PAIR);
        drawn.conductor(Style.PLUS, PLUS, ACCESSORY, 206, ACCESSORY).junction(PLUS, ACCESSORY);
        drawn.conductor(Style.MINUS, 246, SUPPLY, MINUS, SUPPLY, MINUS, TRIGGER + 36);
        drawn.conductor(Style.MINUS, 206, ACCESSORY, MINUS, ACCESSORY).conductor(Style.MINUS, 206, PAIR, MINUS, PAIR);
        drawn.conductor(Style.INK, PLUS, TRIGGER, MINUS, TRIGGER);
        for (double y : new double[] {ACCESSORY, PAIR, TRIGGER}) {
            drawn.junction(MINUS, y);
        }
        drawn.sign(true, PLUS + 14, SUPPLY + 24).sign(false, MINUS - 14, SUPPLY + 24);
    }

    private static void parts(Schematic drawn, Given given) {
        drawn.symbol(Symbol.BATTERY, 246, SUPPLY, Heading.WEST, Side.ABOVE, "G1 battery " + given.label("battery-voltage"), 76);
        drawn.symbol(Symbol.FUSE_LINK, 166, SUPPLY, Heading.WEST, Side.ABOVE, "F3 main " + given.label("main-fuse"), 66);
        drawn.symbol(Symbol.BREAKER, 98, SUPPLY, Heading.WEST, Side.ABOVE, "Q1 breaker " + given.label("breaker-rating"), 74);
        drawn.symbol(Symbol.MAKE_CONTACT, PLUS, SWITCH, Heading.SOUTH, Side.RIGHT, "K1, its contact", 130);
        drawn.symbol(Symbol.FUSE_LINK, 92, ACCESSORY, Heading.EAST, Side.ABOVE, "F1 " + given.label("accessory-fuse"), 90);
        drawn.symbol(Symbol.OUTLET, 206, ACCESSORY, Heading.EAST, Side.ABOVE, "X1 accessory outlet", 110);
        drawn.symbol(Symbol.FUSE_LINK, 92, PAIR, Heading.EAST, Side.ABOVE, "F2 " + given.label("usb-fuse"), 90);
        drawn.symbol(Symbol.CONVERTER, 206, PAIR, Heading.EAST, Side.ABOVE, "X2 outlet pair", 110);
        drawn.words(4, TRIGGER + 24, Side.RIGHT, "from panel P1, way 6", 180);
        drawn.symbol(Symbol.FUSE_LINK, 92, TRIGGER, Heading.EAST, Side.ABOVE, "F6 " + given.label("trigger-fuse"), 90);
        drawn.symbol(Symbol.RELAY_COIL, 206, TRIGGER, Heading.EAST, Side.ABOVE, "K1, its coil", 110);
    }

    private static void numbers(Canvas canvas) {
        double[][] places = {
            {1, 206, SUPPLY}, {2, 58, SUPPLY}, {3, PLUS, 186}, {4, 150, ACCESSORY}, {5, 150, PAIR}, {6, 258, ACCESSORY}, {7, 258, PAIR},
            {8, 150, TRIGGER}, {9, 258, TRIGGER}, {10, MINUS, 140}
        };
        for (double[] place : places) {
            WireNumber.draw(canvas, place[1], place[2], (int) place[0]);
        }
    }
}
