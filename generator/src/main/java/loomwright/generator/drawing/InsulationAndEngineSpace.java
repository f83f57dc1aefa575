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

/** What poor and good insulation leave of the ampacity in an engine space, by the boat table. */
final class InsulationAndEngineSpace implements Drawing {
    @Override
    public String name() {
        return "insulation-and-engine-space";
    }

    @Override
    public List<String> takes() {
        return List.of("size");
    }

    @Override
    public Picture draw(Given given) {
        given.quantity("size", Units.SQUARE_MILLIMETRE);
        List<Bar> bars = new ArrayList<>();
        double largest = 0;
        for (String insulation : List.of("t60", "t105")) {
            String degrees = insulation.substring(1) + "\u00a0°C insulation";
            Quantity outside = ampacity(given, insulation, "no");
            bars.add(bar(degrees + ", outside, 30\u00a0°C", outside, Style.BOX));
            bars.add(bar(degrees + ", engine space, 50\u00a0°C", ampacity(given, insulation, "yes"), Style.SOLID_ACCENT));
            largest = Math.max(largest, outside.value());
        }
        return new Bars("Insulation and place", Axis.fromZero("Ampacity (A)", largest), bars)
                .picture(
                        "Insulation and engine space",
                        "Two pairs of bars of ampacity for " + given.text("size") + " by the boat table. With 60 °C insulation the bar for the"
                                + " engine space is little more than half of the bar outside. With 105 °C insulation it is only a little"
                                + " shorter.");
    }

    private static Bar bar(String name, Quantity ampacity, Style style) {
        return new Bar(name, ampacity.text(), List.of(new Part("", ampacity.value(), style)));
    }

    private static Quantity ampacity(Given given, String insulation, String engineSpace) {
        return Computed.by("ampacity")
                .with("rule-set", "33-cfr-183")
                .with("size", given.text("size"))
                .with("insulation-temperature", insulation)
                .with("engine-space", engineSpace)
                .with("ambient", "30 °C")
                .result("ampacity", Units.AMPERE);
    }
}
