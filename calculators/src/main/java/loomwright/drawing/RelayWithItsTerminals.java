package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Dash;
import loomwright.picture.Heading;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Schematic;
import loomwright.picture.Side;
import loomwright.picture.Style;
import loomwright.picture.Symbol;
import loomwright.quantity.Units;

/** A relay with its terminal numbers between a heavy circuit and the thin trigger wire that works it. */
final class RelayWithItsTerminals implements Drawing {
    private static final double HEAVY = 46;
    private static final double TRIGGER = 146;
    private static final double RETURN = 250;
    private static final double BATTERY = 24;
    private static final double FEED = 62;
    private static final double RELAY = 215;
    private static final double COIL_DOWN = 236;
    private static final double OUTLET = 302;

    @Override
    public String name() {
        return "relay-with-its-terminals";
    }

    @Override
    public List<String> takes() {
        return List.of("breaker", "trigger-fuse");
    }

    @Override
    public Picture draw(Given given) {
        given.number("breaker", Units.AMPERE);
        given.number("trigger-fuse", Units.AMPERE);
        Canvas canvas = new Canvas();
        canvas.rectangle(Style.BOX, 168, 18, 94, 166);
        Schematic drawn = new Schematic(canvas);
        heavy(drawn, given.label("breaker"));
        trigger(drawn, given.label("trigger-fuse"));
        canvas.path(Style.INK, Dash.SHORT, new Outline().move(RELAY, TRIGGER - 17).line(RELAY, HEAVY - 6));
        terminals(canvas);
        return new Picture(
                "A relay between a heavy circuit and its trigger",
                "The heavy circuit runs from the battery through a breaker of " + given.text("breaker")
                        + " to terminal 30 of the relay, through the open contact to terminal 87, and through the outlets back to the battery."
                        + " The trigger runs from the battery through the feed fuse-link, the on switch and a fuse-link of "
                        + given.text("trigger-fuse") + " to terminal 86, through the coil to terminal 85, and back. A dashed line says that"
                        + " the coil moves the contact.",
                canvas,
                Picture.WIDTH,
                266);
    }

    private static void heavy(Schematic drawn, String breaker) {
        double middle = (HEAVY + RETURN) / 2;
        drawn.conductor(Style.PLUS, BATTERY, middle - 12, BATTERY, HEAVY, OUTLET, HEAVY, OUTLET, 215);
        drawn.conductor(Style.MINUS, OUTLET, 215, OUTLET, RETURN, BATTERY, RETURN, BATTERY, middle + 12);
        drawn.symbol(Symbol.BATTERY, BATTERY, middle, Heading.NORTH);
        drawn.symbol(Symbol.SWITCH_CLOSED, 116, HEAVY, Heading.EAST, Side.BELOW, "breaker\u00a0" + breaker, 100);
        drawn.symbol(Symbol.MAKE_CONTACT, RELAY, HEAVY, Heading.EAST);
        drawn.symbol(Symbol.OUTLET, OUTLET, 215, Heading.SOUTH, Side.LEFT, "outlets", 60);
        drawn.sign(true, BATTERY + 14, HEAVY + 22).sign(false, BATTERY + 14, RETURN - 10);
    }

    private static void trigger(Schematic drawn, String fuse) {
        drawn.conductor(Style.PLUS, FEED, HEAVY, FEED, TRIGGER, RELAY, TRIGGER);
        drawn.conductor(Style.MINUS, RELAY, TRIGGER, COIL_DOWN, TRIGGER, COIL_DOWN, RETURN);
        drawn.junction(FEED, HEAVY).junction(COIL_DOWN, RETURN);
        drawn.symbol(Symbol.FUSE_LINK, FEED, 104, Heading.SOUTH, Side.RIGHT, "feed fuse-link", 100);
        drawn.symbol(Symbol.SWITCH_OPEN, 92, TRIGGER, Heading.EAST, Side.BELOW, "on switch", 76);
        drawn.symbol(Symbol.FUSE_LINK, 142, TRIGGER, Heading.EAST, Side.BELOW, fuse, 46);
        drawn.symbol(Symbol.RELAY_COIL, RELAY, TRIGGER, Heading.EAST);
    }

    private static void terminals(Canvas canvas) {
        canvas.text(182, HEAVY - 7, Anchor.MIDDLE, Lettering.SMALL_STRONG, "30");
        canvas.text(248, HEAVY - 7, Anchor.MIDDLE, Lettering.SMALL_STRONG, "87");
        canvas.text(182, TRIGGER - 7, Anchor.MIDDLE, Lettering.SMALL_STRONG, "86");
        canvas.text(249, 178, Anchor.MIDDLE, Lettering.SMALL_STRONG, "85");
        canvas.text(198, 178, Anchor.MIDDLE, Lettering.SMALL, "relay");
    }
}
