package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Bars;
import loomwright.picture.Bars.Bar;
import loomwright.picture.Bars.Part;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** One gauge of conductor in three tables of ampacity, each under its own conditions. */
final class OneGaugeByRuleSet implements Drawing {
    @Override
    public String name() {
        return "one-gauge-by-rule-set";
    }

    @Override
    public List<String> takes() {
        return List.of("size");
    }

    @Override
    public Picture draw(Given given) {
        given.quantity("size", Units.SQUARE_MILLIMETRE);
        List<Bar> bars = List.of(
                bar(given, "faa-11-9", "t105", "Aircraft: full bundle, 70 °C, wire 105 °C", Style.SOLID),
                bar(given, "33-cfr-183", "t60", "Boat: Table 5, 30 °C, wire 60 °C", Style.SOLID_ACCENT),
                bar(given, "nec-free-air", "t60", "Free air, one wire, 30 °C, wire 60 °C", Style.BOX),
                bar(given, "33-cfr-183", "t105", "Boat: Table 5, 30 °C, wire 105 °C", Style.SOLID_ACCENT));
        double largest = 0;
        for (Bar bar : bars) {
            largest = Math.max(largest, bar.parts().get(0).value());
        }
        return new Bars("Table and conditions", Axis.fromZero("Ampacity (A)", largest), bars)
                .picture(
                        "One gauge in three tables",
                        "Four bars of ampacity for " + given.text("size") + ": the aircraft table, the boat table with 60 °C insulation, the"
                                + " free-air table with 60 °C insulation, and the boat table with 105 °C insulation. Each bar names the"
                                + " temperature around the wire and the insulation it holds for.");
    }

    private static Bar bar(Given given, String rules, String insulation, String name, Style style) {
        Quantity ampacity = Computed.by("ampacity")
                .with("rule-set", rules)
                .with("size", given.text("size"))
                .with("insulation-temperature", insulation)
                .with("conductors-together", "1")
                .with("ambient", "30 °C")
                .result("ampacity", Units.AMPERE);
        return new Bar(name, ampacity.text(), List.of(new Part("", ampacity.value(), style)));
    }
}
