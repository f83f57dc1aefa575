package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Bars;
import loomwright.picture.Bars.Bar;
import loomwright.picture.Bars.Part;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** What the feed of a fuse panel carries now and with new loads, beside what the panel and the feed fuse allow. */
final class FeedAgainstItsLimits implements Drawing {
    private static final List<String> PRESENT = List.of("lights", "fan", "pump", "camera-charger");

    @Override
    public String name() {
        return "feed-against-its-limits";
    }

    @Override
    public List<String> takes() {
        return List.of("lights", "fan", "pump", "camera-charger", "usb-pair", "outlet", "panel-limit", "feed-fuse");
    }

    @Override
    public Picture draw(Given given) {
        takes().forEach(value -> given.number(value, Units.AMPERE));
        double pair = given.number("usb-pair", Units.AMPERE);
        double outlet = given.number("outlet", Units.AMPERE);
        Quantity now = amperes(given, pair, "current-now");
        Quantity withPair = amperes(given, pair, "current-after");
        Quantity withBoth = amperes(given, pair + outlet, "current-after");
        Quantity limit = amperes(given, pair, "tightest-limit");
        double most = given.number("panel-limit", Units.AMPERE);
        Part loads = new Part("what hangs on it now", now.value(), Style.SOLID);
        Part usb = new Part("USB outlet pair", pair, Style.SOLID_ACCENT);
        Part accessory = new Part("12 V outlet", outlet, Style.HATCH);
        List<Bar> bars = new ArrayList<>();
        bars.add(new Bar("limit of the panel", given.label("panel-limit"), List.of(new Part("", most, Style.BOX))));
        bars.add(new Bar("limit for hours", text(limit), List.of(new Part("", limit.value(), Style.BOX))));
        bars.add(new Bar("now", text(now), List.of(loads)));
        bars.add(new Bar("with the USB pair", text(withPair), List.of(loads, usb)));
        bars.add(new Bar("with the pair and the 12 V outlet", text(withBoth), List.of(loads, usb, accessory)));
        return new Bars("Case", Axis.fromZero("Current in the feed (A)", Math.max(most, withBoth.value())), bars)
                .picture(
                        "The feed of the fuse panel against its limits",
                        "Five bars. The limit of the panel is " + given.text("panel-limit") + " and the limit for hours " + limit.text(3)
                                + ". The feed carries " + now.text(3) + " now, " + withPair.text(3) + " with the USB pair and " + withBoth.text(3)
                                + " with the 12 V outlet as well.");
    }

    private static Quantity amperes(Given given, double added, String result) {
        Computed panel = Computed.by("panel-headroom");
        for (int i = 0; i < PRESENT.size(); i++) {
            panel.with("way-" + (i + 1) + "-current", given.text(PRESENT.get(i)));
        }
        return panel.with("new-current", added, Units.AMPERE)
                .with("panel-limit", given.text("panel-limit"))
                .with("feed-fuse", given.text("feed-fuse"))
                .result(result, Units.AMPERE);
    }

    private static String text(Quantity current) {
        return current.text(3).replace(' ', '\u00a0');
    }
}
