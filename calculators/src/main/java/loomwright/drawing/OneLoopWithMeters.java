package loomwright.drawing;

import java.util.List;
import loomwright.picture.Loop;
import loomwright.picture.Picture;
import loomwright.picture.Symbol;

/** A battery, a fuse-link, a switch and a lamp in one loop, and how the two kinds of meter are joined to it. */
final class OneLoopWithMeters implements Drawing {
    @Override
    public String name() {
        return "one-loop-with-meters";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        return new Loop(Symbol.LAMP, "lamp")
                .out(Symbol.FUSE_LINK, "fuse-link")
                .out(Symbol.SWITCH_CLOSED, "switch")
                .out(Symbol.AMMETER, "amperes: in the loop")
                .across(Symbol.VOLTMETER, "volts: across two points")
                .picture(
                        "One loop with two meters",
                        "A battery, a fuse-link beside its positive terminal, a switch, an ammeter and a lamp stand in one closed loop. A"
                                + " voltmeter is joined to the two sides of the lamp. Arrows show the current leaving the positive terminal"
                                + " and returning to the negative terminal.");
    }
}
