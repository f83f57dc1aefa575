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

/** The watt-hours of each load of the trailer in a day. */
final class LoadsOfTheTrailersDay implements Drawing {
    private static final List<String> LOADS = List.of("lamp", "fan", "usb", "laptop");
    private static final List<String> NAMES = List.of("LED strip", "roof fan, half the time", "outlet pair", "laptop");

    @Override
    public String name() {
        return "loads-of-the-trailers-day";
    }

    @Override
    public List<String> takes() {
        List<String> keys = new ArrayList<>();
        for (String load : LOADS) {
            keys.add(load + "-power");
            keys.add(load + "-hours");
        }
        keys.addAll(List.of("fan-duty", "pump-current", "pump-hours", "pump-duty", "standing-current", "system-voltage"));
        return keys;
    }

    @Override
    public Picture draw(Given given) {
        given.number("system-voltage", Units.VOLT);
        List<Bar> bars = new ArrayList<>();
        double largest = 0;
        for (int i = 0; i < LOADS.size(); i++) {
            Quantity energy = load(given, LOADS.get(i));
            largest = Math.max(largest, energy.value());
            bars.add(bar(NAMES.get(i), energy, Style.SOLID));
        }
        bars.add(bar("water pump, half the time", pump(given), Style.SOLID));
        bars.add(bar("standing draw, 24 h", standing(given), Style.SOLID_ACCENT));
        return new Bars("Load", Axis.fromZero("Energy of the day (Wh)", largest), bars)
                .picture(
                        "Where the day's energy goes",
                        "Six bars of watt-hours, one for each load of the trailer in a day: LED strip, roof fan, outlet pair, laptop, water pump"
                                + " and standing draw. Their figures stand beside them.");
    }

    private static Quantity load(Given given, String load) {
        given.number(load + "-power", Units.WATT);
        given.number(load + "-hours", Units.HOUR);
        Computed computed = Computed.by("day-energy")
                .with("load-1-power", given.text(load + "-power"))
                .with("load-1-hours", given.text(load + "-hours"));
        if (load.equals("fan")) {
            given.number("fan-duty", Units.PERCENT);
            computed.with("load-1-duty", given.text("fan-duty"));
        }
        return computed.result("load-1-energy", Units.WATT_HOUR);
    }

    private static Quantity pump(Given given) {
        given.number("pump-current", Units.AMPERE);
        given.number("pump-hours", Units.HOUR);
        given.number("pump-duty", Units.PERCENT);
        return Computed.by("day-energy")
                .with("load-1-current", given.text("pump-current"))
                .with("load-1-hours", given.text("pump-hours"))
                .with("load-1-duty", given.text("pump-duty"))
                .with("system-voltage", given.text("system-voltage"))
                .result("load-1-energy", Units.WATT_HOUR);
    }

    private static Quantity standing(Given given) {
        given.number("standing-current", Units.AMPERE);
        return Computed.by("day-energy")
                .with("standing-current", given.text("standing-current"))
                .with("system-voltage", given.text("system-voltage"))
                .result("standing-energy", Units.WATT_HOUR);
    }

    private static Bar bar(String name, Quantity energy, Style style) {
        return new Bar(name, energy.text(3), List.of(new Part("", energy.value(), style)));
    }
}
