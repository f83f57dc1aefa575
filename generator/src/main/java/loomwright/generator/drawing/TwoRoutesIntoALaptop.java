package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Bars;
import loomwright.picture.Bars.Bar;
import loomwright.picture.Bars.Part;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;

/** What the battery gives for one charge, direct and by inverter, each split into what arrives and what is lost. */
final class TwoRoutesIntoALaptop implements Drawing {
    private static final List<String> KEYS = List.of(
            "device-power", "charging-hours", "direct-efficiency", "inverter-efficiency", "inverter-standing", "inverter-hours",
            "adapter-efficiency");
    private static final List<Unit> UNITS =
            List.of(Units.WATT, Units.HOUR, Units.PERCENT, Units.PERCENT, Units.WATT, Units.HOUR, Units.PERCENT);

    @Override
    public String name() {
        return "two-routes-into-a-laptop";
    }

    @Override
    public List<String> takes() {
        return KEYS;
    }

    @Override
    public Picture draw(Given given) {
        Computed routes = Computed.by("two-routes");
        for (int i = 0; i < KEYS.size(); i++) {
            given.number(KEYS.get(i), UNITS.get(i));
            routes.with(KEYS.get(i), given.text(KEYS.get(i)));
        }
        Quantity direct = routes.result("direct-energy", Units.WATT_HOUR);
        Quantity inverter = routes.result("inverter-energy", Units.WATT_HOUR);
        Quantity device = routes.result("device-energy", Units.WATT_HOUR);
        List<Bar> bars = List.of(
                bar("direct from 12 V", direct, device, routes.number("direct-lost", Units.WATT_HOUR)),
                bar("inverter and mains adapter", inverter, device, routes.number("inverter-lost", Units.WATT_HOUR)));
        double longest = Math.max(direct.value(), inverter.value());
        return new Bars("Way", Axis.fromZero("Energy from the battery (Wh)", longest).parts(4), bars)
                .picture(
                        "One charge, two ways",
                        "Two bars of watt-hours from the battery. Both begin with the same " + device.text(3)
                                + " that reach the laptop. Direct from 12 V the bar ends at " + direct.text(3)
                                + "; by inverter and mains adapter it ends at " + inverter.text(3) + ". The rest of each bar is lost as heat.");
    }

    private static Bar bar(String name, Quantity whole, Quantity device, double lost) {
        return new Bar(
                name, whole.text(3),
                List.of(new Part("reaches the laptop", device.value(), Style.SOLID_ACCENT), new Part("lost as heat", lost, Style.HATCH)));
    }
}
